-- V203__steps_of_the_day_from_the_design.sql  From which frozen revision of the design the steps of an outage's day were made,
-- so that a later revision is noticed; and at which steps a person has to be named before anybody goes on.
create table outage_steps (
    window_id uuid        not null,
    branch_id uuid        not null,
    revision  text        not null,
    made_by   text        not null,
    made_at   timestamptz not null,
    constraint outage_steps_key primary key (window_id),
    constraint outage_steps_window foreign key (window_id) references outage_window,
    constraint outage_steps_branch foreign key (branch_id) references branch,
    constraint outage_steps_revision_given check (length(trim(revision)) between 1 and 8)
);
create index outage_steps_of_branch on outage_steps (branch_id);
select plumbrow_wall('outage_steps');

alter table day_log add column design_revision text;
alter table day_log_step add column named text;
