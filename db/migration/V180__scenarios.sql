-- V180__scenarios.sql  Named copies of the plan with one thing otherwise. Only what is otherwise is kept: the plan with it is
-- computed at each look, so it never grows old. What is accepted is recorded where it belongs and leaves this table.
create table scenario (
    id         uuid        not null,
    branch_id  uuid        not null,
    version    bigint      not null,
    name       text        not null,
    kind       text        not null,
    crew_id    uuid,
    machine_id uuid,
    first_day  date,
    days       integer,
    mounting   text,
    kw_dc      numeric,
    made_at    timestamptz not null,
    made_by    text        not null,
    constraint scenario_key primary key (id),
    constraint scenario_branch foreign key (branch_id) references branch,
    constraint scenario_crew foreign key (crew_id) references crew,
    constraint scenario_machine foreign key (machine_id) references shared_equipment,
    constraint scenario_name_taken unique (branch_id, name),
    constraint scenario_name_length check (length(name) between 1 and 60),
    constraint scenario_kind_known check (kind in ('CREW_AWAY', 'CREW_MORE', 'MACHINE_AWAY', 'NEW_JOB')),
    constraint scenario_days_limit check (days between 1 and 250),
    constraint scenario_size_limit check (kw_dc between 0.1 and 20000),
    constraint scenario_whole check (case kind
        when 'CREW_AWAY' then crew_id is not null and first_day is not null and days is not null
        when 'CREW_MORE' then crew_id is not null and first_day is not null
        when 'MACHINE_AWAY' then machine_id is not null and first_day is not null and days is not null
        else mounting is not null and kw_dc is not null end)
);
create index scenario_of_crew on scenario (crew_id);
create index scenario_of_machine on scenario (machine_id);
select plumbrow_wall('scenario');
