-- V142__yield_of_a_project.sql  How a project's yield is computed (weather, losses one by one, snow, rows, spread), and the
-- result with the hash of all that it was made from: a result whose hash no longer fits is worked out anew.
create table yield_setting (
    project_id uuid   primary key,
    branch_id  uuid   not null,
    version    bigint not null default 0,
    weather_id uuid,
    terms      jsonb  not null,
    constraint yield_setting_project foreign key (project_id) references project,
    constraint yield_setting_branch foreign key (branch_id) references branch,
    constraint yield_setting_weather foreign key (weather_id) references weather_source
);
create index yield_setting_of_branch on yield_setting (branch_id);
create index yield_setting_of_weather on yield_setting (weather_id);
select plumbrow_wall('yield_setting');

create table estimate (
    project_id  uuid        primary key,
    branch_id   uuid        not null,
    inputs_hash bytea       not null,
    result      jsonb       not null,
    computed_at timestamptz not null,
    constraint estimate_project foreign key (project_id) references project,
    constraint estimate_branch foreign key (branch_id) references branch,
    constraint estimate_hash_length check (length(inputs_hash) = 32)
);
create index estimate_of_branch on estimate (branch_id);
select plumbrow_wall('estimate');
