-- V190__finished_work.sql  What finished work took, row of the rates by row: from it a branch learns its own pace. Written anew
-- whenever the activity is recorded or reported, so it never says more than they do.
create table finished_work (
    activity_id  uuid             not null,
    rate_code    text             not null,
    crew_id      uuid             not null,
    branch_id    uuid             not null,
    project_id   uuid             not null,
    quantity     double precision not null,
    crew_days    double precision not null,
    done_on      date             not null,
    from_reports boolean          not null,
    constraint finished_work_once primary key (activity_id, rate_code, crew_id),
    constraint finished_work_activity foreign key (activity_id) references activity,
    constraint finished_work_crew foreign key (crew_id) references crew,
    constraint finished_work_branch foreign key (branch_id) references branch,
    constraint finished_work_project foreign key (project_id) references project,
    constraint finished_work_quantity_range check (quantity >= 0),
    constraint finished_work_crew_days_range check (crew_days between 0.01 and 1000)
);
create index finished_work_of_branch on finished_work (branch_id);
create index finished_work_of_project on finished_work (project_id);
create index finished_work_of_crew on finished_work (crew_id);
select plumbrow_wall('finished_work');
