-- V240__scenario_changes.sql  A scenario may have several things otherwise: a crew lost and another one hired. Each is a row of
-- its own; what a scenario had until now becomes its first.
create table scenario_change (
    id          uuid        not null,
    branch_id   uuid        not null,
    scenario_id uuid        not null,
    position    integer     not null,
    kind        text        not null,
    name        text        not null default '',
    crew_id     uuid,
    machine_id  uuid,
    activity_id uuid,
    first_day   date,
    days        integer,
    mounting    text,
    kw_dc       numeric,
    constraint scenario_change_key primary key (id),
    constraint scenario_change_branch foreign key (branch_id) references branch,
    constraint scenario_change_scenario foreign key (scenario_id) references scenario on delete cascade,
    constraint scenario_change_crew foreign key (crew_id) references crew,
    constraint scenario_change_machine foreign key (machine_id) references shared_equipment,
    constraint scenario_change_activity foreign key (activity_id) references activity,
    constraint scenario_change_place unique (scenario_id, position),
    constraint scenario_change_name_length check (length(name) <= 60),
    constraint scenario_change_kind_known check (kind in
        ('CREW_AWAY', 'CREW_MORE', 'MACHINE_AWAY', 'MACHINE_MORE', 'SATURDAYS', 'WORK_GIVEN', 'NEW_JOB')),
    constraint scenario_change_days_limit check (days between 1 and 250),
    constraint scenario_change_size_limit check (kw_dc between 0.1 and 20000),
    constraint scenario_change_whole check (case kind
        when 'CREW_AWAY' then crew_id is not null and first_day is not null and days is not null
        when 'CREW_MORE' then crew_id is not null and first_day is not null and name <> ''
        when 'MACHINE_AWAY' then machine_id is not null and first_day is not null and days is not null
        when 'MACHINE_MORE' then machine_id is not null and first_day is not null and name <> ''
        when 'SATURDAYS' then first_day is not null and days is not null
        when 'WORK_GIVEN' then activity_id is not null and crew_id is not null and first_day is not null
        else mounting is not null and kw_dc is not null end)
);
create index scenario_change_of_branch on scenario_change (branch_id);
create index scenario_change_of_crew on scenario_change (crew_id);
create index scenario_change_of_machine on scenario_change (machine_id);
create index scenario_change_of_activity on scenario_change (activity_id);
select plumbrow_wall('scenario_change');

insert into scenario_change (id, branch_id, scenario_id, position, kind, name, crew_id, machine_id, first_day, days, mounting, kw_dc)
select gen_random_uuid(), branch_id, id, 1, kind, case kind when 'CREW_MORE' then name else '' end, crew_id, machine_id, first_day,
       days, mounting, kw_dc
  from scenario;

alter table scenario drop constraint scenario_whole, drop constraint scenario_size_limit, drop constraint scenario_days_limit,
    drop constraint scenario_kind_known, drop column kind, drop column crew_id, drop column machine_id, drop column first_day,
    drop column days, drop column mounting, drop column kw_dc;
