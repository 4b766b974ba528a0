-- V058__intake.sql  A table of projects that somebody brings: kept with its choices until it is taken in or left, so that
-- the preview can be looked at in peace, by another person too, and the rows that were left out can be fetched later.
create table project_intake (
    id           uuid        primary key,
    version      bigint      not null default 0,
    branch_id    uuid        not null,
    file_name    text        not null,
    bytes        bytea       not null,
    choices      text        not null,
    state        text        not null,
    opened       int,
    were_here    int,
    left_out     int,
    at           timestamptz not null,
    by_person_id uuid,
    by_name      text        not null,
    taken_at     timestamptz,
    constraint project_intake_branch foreign key (branch_id) references branch,
    constraint project_intake_person foreign key (by_person_id) references person,
    constraint project_intake_state_known check (state in ('LOOKED_AT', 'WAITS', 'TAKEN_IN')),
    constraint project_intake_counted_when_taken check
        ((state = 'TAKEN_IN') = (opened is not null and were_here is not null and left_out is not null))
);
create index project_intake_of_branch on project_intake (branch_id, at);
create index project_intake_by_person on project_intake (by_person_id);
select plumbrow_wall('project_intake');
