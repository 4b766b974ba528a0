-- V191__daily_reports.sql  What a crew did on a project on a day, as its lead reports it: people, hours, weather, trouble, photos,
-- and line by line what was done of which activity.
create table daily_report (
    id            uuid        primary key,
    version       bigint      not null default 0,
    branch_id     uuid        not null,
    project_id    uuid        not null,
    crew_id       uuid        not null,
    day           date        not null,
    people        int         not null,
    hours         numeric     not null,
    weather       text        not null,
    weather_hours numeric     not null default 0,
    trouble       text        not null default '',
    reported_at   timestamptz not null,
    reported_by   text        not null,
    constraint daily_report_branch foreign key (branch_id) references branch,
    constraint daily_report_project foreign key (project_id) references project,
    constraint daily_report_crew foreign key (crew_id) references crew,
    constraint daily_report_once_a_day unique (project_id, crew_id, day),
    constraint daily_report_people_range check (people between 1 and 40),
    constraint daily_report_hours_range check (hours between 0 and 24),
    constraint daily_report_weather_known check (weather in ('DRY', 'RAIN', 'WIND', 'HEAT', 'COLD', 'SNOW', 'LIGHTNING')),
    constraint daily_report_weather_hours_range check (weather_hours between 0 and 24),
    constraint daily_report_trouble_length check (length(trouble) <= 2000)
);
create index daily_report_of_branch on daily_report (branch_id);
create index daily_report_of_crew on daily_report (crew_id, day);
select plumbrow_wall('daily_report');

create table daily_report_line (
    report_id   uuid    not null,
    activity_id uuid    not null,
    branch_id   uuid    not null,
    quantity    numeric,
    hours       numeric not null,
    done        boolean not null,
    constraint daily_report_line_once primary key (report_id, activity_id),
    constraint daily_report_line_report foreign key (report_id) references daily_report,
    constraint daily_report_line_activity foreign key (activity_id) references activity,
    constraint daily_report_line_branch foreign key (branch_id) references branch,
    constraint daily_report_line_quantity_range check (quantity between 0 and 100000),
    constraint daily_report_line_hours_range check (hours > 0 and hours <= 24)
);
create index daily_report_line_of_activity on daily_report_line (activity_id);
create index daily_report_line_of_branch on daily_report_line (branch_id);
select plumbrow_wall('daily_report_line');

create table daily_report_photo (
    report_id   uuid not null,
    evidence_id uuid not null,
    branch_id   uuid not null,
    constraint daily_report_photo_once primary key (report_id, evidence_id),
    constraint daily_report_photo_report foreign key (report_id) references daily_report,
    constraint daily_report_photo_evidence foreign key (evidence_id) references evidence,
    constraint daily_report_photo_branch foreign key (branch_id) references branch
);
create index daily_report_photo_of_evidence on daily_report_photo (evidence_id);
create index daily_report_photo_of_branch on daily_report_photo (branch_id);
select plumbrow_wall('daily_report_photo');
