-- V192__day_one_steps.sql  What a crew ticks off on its first morning at a site, by name and hour. The first tick stands; the
-- journal keeps what was taken back.
create table day_one_step (
    project_id uuid        not null,
    step       text        not null,
    branch_id  uuid        not null,
    at         timestamptz not null,
    by_name    text        not null,
    constraint day_one_step_once primary key (project_id, step),
    constraint day_one_step_project foreign key (project_id) references project,
    constraint day_one_step_branch foreign key (branch_id) references branch,
    constraint day_one_step_known check (step in ('INTRODUCED', 'LOCATION', 'SHADE', 'STRING_LINE'))
);
create index day_one_step_of_branch on day_one_step (branch_id);
select plumbrow_wall('day_one_step');
