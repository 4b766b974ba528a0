-- V141__use_of_a_project.sql  What a site uses: one row a meter with what somebody brought (typed months, a table, a Green
-- Button file kept as evidence), and what all counted meters together come to, worked out anew at each change.
create table use_meter (
    id          uuid        primary key,
    branch_id   uuid        not null,
    project_id  uuid        not null,
    version     bigint      not null default 0,
    name        text        not null,
    kind        text        not null,
    typed       jsonb,
    evidence_id uuid,
    watt_hours  boolean     not null default false,
    counted     boolean     not null,
    reading     jsonb       not null,
    brought_at  timestamptz not null,
    brought_by  text        not null,
    ended_at    timestamptz,
    constraint use_meter_branch foreign key (branch_id) references branch,
    constraint use_meter_project foreign key (project_id) references project,
    constraint use_meter_evidence foreign key (evidence_id) references evidence,
    constraint use_meter_kind_known check (kind in ('TYPED', 'TABLE', 'GREEN_BUTTON')),
    constraint use_meter_has_source check ((kind = 'TYPED') = (typed is not null) and (kind = 'TYPED') = (evidence_id is null)),
    constraint use_meter_name_length check (length(name) between 1 and 80)
);
create index use_meter_of_project on use_meter (project_id);
create index use_meter_of_branch on use_meter (branch_id);
create index use_meter_of_evidence on use_meter (evidence_id);
create unique index use_meter_named_once on use_meter (project_id, lower(name)) where ended_at is null;
select plumbrow_wall('use_meter');

create table project_use (
    project_id uuid               primary key,
    branch_id  uuid               not null,
    year       jsonb              not null,
    hours_kwh  double precision[],
    worked_at  timestamptz        not null,
    constraint project_use_project foreign key (project_id) references project,
    constraint project_use_branch foreign key (branch_id) references branch,
    constraint project_use_hours_whole check (hours_kwh is null or cardinality(hours_kwh) = 8760)
);
create index project_use_of_branch on project_use (branch_id);
select plumbrow_wall('project_use');
