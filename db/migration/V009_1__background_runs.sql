-- V009_1__background_runs.sql  What is done in the background, for whom, how far it is and how it ended.
-- When it is started is scheduled_tasks' matter; this table is what people see. At most one run of a kind waits and one
-- runs for a branch and subject: whoever asks while one waits joins it (and locks its row, so that it cannot begin
-- before their change is committed).
create table background_run (
    id            uuid        primary key,
    version       bigint      not null default 0,
    branch_id     uuid        not null,
    kind          text        not null,
    subject_id    uuid,
    state         text        not null,
    done_steps    integer     not null default 0,
    total_steps   integer     not null default 0,
    words         text        not null default '',
    outcome       text,
    asked_by      text        not null,
    asked_at      timestamptz not null,
    started_at    timestamptz,
    finished_at   timestamptz,
    stop_asked_by text,
    tries         integer     not null default 0,
    constraint background_run_branch foreign key (branch_id) references branch,
    constraint background_run_state_known check (state in ('QUEUED', 'RUNNING', 'DONE', 'FAILED', 'STOPPED')),
    constraint background_run_steps_in_order check (0 <= done_steps and 0 <= total_steps),
    constraint background_run_over_says_how check ((state in ('DONE', 'FAILED', 'STOPPED')) = (outcome is not null and finished_at is not null))
);
create index background_run_of_branch on background_run (branch_id, kind, subject_id, id);
create index background_run_by_end on background_run (finished_at) where finished_at is not null;
create unique index background_run_one_waits on background_run (branch_id, kind, subject_id) nulls not distinct where state = 'QUEUED';
create unique index background_run_one_runs on background_run (branch_id, kind, subject_id) nulls not distinct where state = 'RUNNING';
select plumbrow_wall('background_run');
