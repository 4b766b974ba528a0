-- V202__readiness_of_a_cutover.sql  The day before: what people say is ready, item by item with a version each, and the words
-- go, not yet or no-go with the person who said them. Decisions are only ever added; the newest counts.
create table outage_ready (
    window_id  uuid        not null,
    item       text        not null,
    branch_id  uuid        not null,
    version    bigint      not null default 0,
    state      text        not null,
    note       text        not null,
    said_by    text        not null,
    said_at    timestamptz not null,
    constraint outage_ready_key primary key (window_id, item),
    constraint outage_ready_window foreign key (window_id) references outage_window,
    constraint outage_ready_branch foreign key (branch_id) references branch,
    constraint outage_ready_state_known check (state in ('READY', 'NOT_YET', 'WRONG', 'NOT_HERE')),
    constraint outage_ready_note_length check (length(note) <= 200),
    constraint outage_ready_says_why check (state not in ('WRONG', 'NOT_HERE') or length(trim(note)) > 0)
);
create index outage_ready_of_branch on outage_ready (branch_id);
select plumbrow_wall('outage_ready');

create table outage_go (
    id         uuid        primary key,
    branch_id  uuid        not null,
    window_id  uuid        not null,
    decision   text        not null,
    person     text        not null,
    reason     text        not null,
    written_by text        not null,
    said_at    timestamptz not null,
    constraint outage_go_branch foreign key (branch_id) references branch,
    constraint outage_go_window foreign key (window_id) references outage_window,
    constraint outage_go_decision_known check (decision in ('GO', 'NOT_YET', 'NO_GO')),
    constraint outage_go_person_given check (length(trim(person)) between 2 and 120),
    constraint outage_go_reason_length check (length(reason) <= 200),
    constraint outage_go_says_why check (decision = 'GO' or length(trim(reason)) > 0)
);
create index outage_go_of_window on outage_go (window_id, said_at desc);
create index outage_go_of_branch on outage_go (branch_id);
select plumbrow_append_only('outage_go');
select plumbrow_wall('outage_go');
