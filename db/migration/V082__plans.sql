-- V082__plans.sql  Plans of a branch: one draft at most, one published at most, older published ones kept for comparison.
-- A draft may clash and says so in its findings; what is published cannot (V083).
create table plan (
    id               uuid        primary key,
    version          bigint      not null,
    branch_id        uuid        not null,
    number           int         not null,
    state            text        not null,
    made_at          timestamptz not null,
    made_by          text        not null,
    first_half_day   int         not null,
    fingerprint      text        not null,
    half_days_late   bigint      not null,
    published_at     timestamptz,
    published_by     text,
    constraint plan_branch foreign key (branch_id) references branch,
    constraint plan_number_taken unique (branch_id, number),
    constraint plan_state_known check (state in ('DRAFT', 'PUBLISHED', 'SUPERSEDED')),
    constraint plan_published_says_when check
        ((state = 'DRAFT') = (published_at is null) and (published_at is null) = (published_by is null))
);
create unique index plan_one_draft on plan (branch_id) where state = 'DRAFT';
create unique index plan_one_published on plan (branch_id) where state = 'PUBLISHED';
select plumbrow_wall('plan');

create table planned_activity (
    plan_id            uuid not null,
    activity_id        uuid not null,
    branch_id          uuid not null,
    project_id         uuid not null,
    start_half_day     int  not null,
    finish_half_day    int  not null,
    crew_id            uuid,
    bound_kind         text not null,
    bound_activity_id  uuid,
    bound_half_day     int,
    bound_sentence     text not null,
    constraint planned_activity_key primary key (plan_id, activity_id),
    constraint planned_activity_plan foreign key (plan_id) references plan on delete cascade,
    constraint planned_activity_activity foreign key (activity_id) references activity,
    constraint planned_activity_bound_activity foreign key (bound_activity_id) references activity,
    constraint planned_activity_branch foreign key (branch_id) references branch,
    constraint planned_activity_project foreign key (project_id) references project,
    constraint planned_activity_crew foreign key (crew_id) references crew,
    constraint planned_activity_in_order check (start_half_day <= finish_half_day),
    constraint planned_activity_bound_known check (bound_kind in
        ('TODAY', 'RELEASED', 'AFTER', 'CREW_BUSY', 'CREW_AWAY', 'EQUIPMENT_BUSY', 'EQUIPMENT_AWAY', 'DAY_OFF', 'PIN',
         'UNDERWAY', 'FINISHED', 'JUST_IN_TIME'))
);
create index planned_activity_of_activity on planned_activity (activity_id);
create index planned_activity_bound_by on planned_activity (bound_activity_id);
create index planned_activity_of_crew on planned_activity (crew_id);
create index planned_activity_of_project on planned_activity (project_id);
create index planned_activity_of_branch on planned_activity (branch_id);
select plumbrow_wall('planned_activity');

create table planned_promise (
    plan_id             uuid not null,
    project_id          uuid not null,
    branch_id           uuid not null,
    milestone           text not null,
    promised_on         date not null,
    finish_half_day     int,
    half_days_late      int  not null,
    half_days_spare     int  not null,
    binding_activity_id uuid,
    constraint planned_promise_key primary key (plan_id, project_id),
    constraint planned_promise_plan foreign key (plan_id) references plan on delete cascade,
    constraint planned_promise_project foreign key (project_id) references project,
    constraint planned_promise_binding foreign key (binding_activity_id) references activity,
    constraint planned_promise_branch foreign key (branch_id) references branch,
    constraint planned_promise_late_or_spare check (half_days_late >= 0 and half_days_spare >= 0 and (half_days_late = 0 or half_days_spare = 0))
);
create index planned_promise_of_project on planned_promise (project_id);
create index planned_promise_of_binding on planned_promise (binding_activity_id);
create index planned_promise_of_branch on planned_promise (branch_id);
select plumbrow_wall('planned_promise');

create table plan_finding (
    plan_id     uuid not null,
    position    int  not null,
    branch_id   uuid not null,
    kind        text not null,
    activity_id uuid,
    stops_publishing boolean not null,
    sentence    text not null,
    constraint plan_finding_key primary key (plan_id, position),
    constraint plan_finding_plan foreign key (plan_id) references plan on delete cascade,
    constraint plan_finding_activity foreign key (activity_id) references activity,
    constraint plan_finding_branch foreign key (branch_id) references branch
);
create index plan_finding_of_activity on plan_finding (activity_id);
create index plan_finding_of_branch on plan_finding (branch_id);
select plumbrow_wall('plan_finding');

-- Which machine goes to which activity; none where the draft needs more than there are.
create table planned_equipment (
    plan_id         uuid not null,
    position        int  not null,
    branch_id       uuid not null,
    activity_id     uuid not null,
    kind            text not null,
    equipment_id    uuid,
    start_half_day  int  not null,
    finish_half_day int  not null,
    constraint planned_equipment_key primary key (plan_id, position),
    constraint planned_equipment_plan foreign key (plan_id) references plan on delete cascade,
    constraint planned_equipment_activity foreign key (activity_id) references activity,
    constraint planned_equipment_machine foreign key (equipment_id) references shared_equipment,
    constraint planned_equipment_branch foreign key (branch_id) references branch,
    constraint planned_equipment_in_order check (start_half_day <= finish_half_day)
);
create index planned_equipment_of_activity on planned_equipment (activity_id);
create index planned_equipment_of_machine on planned_equipment (equipment_id);
create index planned_equipment_of_branch on planned_equipment (branch_id);
select plumbrow_wall('planned_equipment');
