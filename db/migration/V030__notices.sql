-- V030__notices.sql  The outbox: what leaves the house, written in the transaction of the change it tells of.
-- branch_id is null for what concerns the firm as a whole; such rows lie outside every branch's wall and need the scope "all".
-- project_id has no foreign key: projects are a later room's, and a notice outlives nothing it names.
create table notice (
    id              uuid        primary key,
    version         bigint      not null default 0,
    branch_id       uuid,
    project_id      uuid,
    kind            text        not null,
    about           text        not null,
    to_name         text        not null,
    to_address      text        not null,
    reply_name      text        not null,
    reply_address   text        not null,
    subject         text        not null,
    body            text        not null,
    short_text      text        not null,
    calendar_name   text,
    calendar_method text,
    calendar_ics    text,
    state           text        not null,
    reason          text        not null default '',
    tries           int         not null default 0,
    created_at      timestamptz not null,
    next_try_at     timestamptz not null,
    settled_at      timestamptz,
    settled_by      text        not null default '',
    blanked_at      timestamptz,
    constraint notice_branch foreign key (branch_id) references branch,
    constraint notice_kind_known check (kind in ('SIGN_IN', 'STAFF', 'CUSTOMER', 'UTILITY')),
    constraint notice_of_a_branch check (branch_id is not null or kind = 'SIGN_IN'),
    constraint notice_state_known check (state in ('WAITING', 'SENT', 'NOT_SENT', 'BY_HAND', 'WITHDRAWN')),
    constraint notice_settled_when check ((state = 'WAITING') = (settled_at is null)),
    constraint notice_calendar_whole check ((calendar_ics is null) = (calendar_method is null)
        and (calendar_ics is null) = (calendar_name is null)),
    constraint notice_calendar_method_known check (calendar_method in ('REQUEST', 'CANCEL')),
    constraint notice_tries_few check (tries between 0 and 5),
    constraint notice_short_text_short check (length(short_text) <= 160)
);
create index notice_of_branch on notice (branch_id, created_at desc, id desc);
create index notice_of_project on notice (project_id, created_at desc) where project_id is not null;
create index notice_to_send on notice (next_try_at) where state = 'WAITING';
create index notice_about on notice (about) where about <> '';
create index notice_to_sign_in on notice (created_at desc, id desc) where kind = 'SIGN_IN';
create index notice_settled on notice (settled_at) where settled_at is not null;
select plumbrow_wall('notice');
