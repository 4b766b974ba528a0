-- V131__phone_sendings.sql  A phone without signal keeps what is written and sends it later, perhaps more than once, as the
-- answer may be lost on the way: what has come is noted under the id that the phone made. The survey's own table of this
-- kind was never written to; this one serves every page that is used without signal.
drop table survey_sending;

create table phone_sending (
    project_id uuid        not null,
    id         uuid        not null,
    branch_id  uuid        not null,
    what       text        not null,
    version    bigint      not null,
    written_at timestamptz not null,
    at         timestamptz not null,
    by_name    text        not null,
    constraint phone_sending_key primary key (project_id, id),
    constraint phone_sending_project foreign key (project_id) references project,
    constraint phone_sending_branch foreign key (branch_id) references branch,
    constraint phone_sending_what_said check (length(what) between 1 and 60),
    constraint phone_sending_version_counts check (version >= 0)
);
create index phone_sending_of_branch on phone_sending (branch_id);
select plumbrow_append_only('phone_sending');
select plumbrow_wall('phone_sending');
