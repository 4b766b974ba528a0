-- V083__bookings.sql  What the published plan books: a crew or a piece of shared equipment is at one place at a time.
-- Two managers publishing at once is the case that matters; the database refuses it, whatever the program thinks.
-- Half-days are numbered by plumbrow_half_day. Bookings that lie before the plan's first half-day stay as the record of the past.
create table crew_booking (
    id          uuid      primary key,
    branch_id   uuid      not null,
    crew_id     uuid      not null,
    project_id  uuid      not null,
    activity_id uuid      not null,
    half_days   int8range not null,
    constraint crew_booking_branch foreign key (branch_id) references branch,
    constraint crew_booking_crew foreign key (crew_id) references crew,
    constraint crew_booking_project foreign key (project_id) references project,
    constraint crew_booking_activity foreign key (activity_id) references activity,
    constraint crew_booking_is_some_time check (not isempty(half_days) and lower(half_days) is not null and upper(half_days) is not null),
    constraint crew_not_double_booked exclude using gist (crew_id with =, half_days with &&)
);
create index crew_booking_of_project on crew_booking (project_id);
create index crew_booking_of_activity on crew_booking (activity_id);
create index crew_booking_of_branch on crew_booking (branch_id);
create index crew_booking_of_crew on crew_booking (crew_id);
select plumbrow_wall('crew_booking');

-- One row a machine: of two telehandlers the plan books the one or the other.
create table equipment_booking (
    id           uuid      primary key,
    branch_id    uuid      not null,
    equipment_id uuid      not null,
    project_id   uuid      not null,
    activity_id  uuid      not null,
    half_days    int8range not null,
    constraint equipment_booking_branch foreign key (branch_id) references branch,
    constraint equipment_booking_equipment foreign key (equipment_id) references shared_equipment,
    constraint equipment_booking_project foreign key (project_id) references project,
    constraint equipment_booking_activity foreign key (activity_id) references activity,
    constraint equipment_booking_is_some_time check (not isempty(half_days) and lower(half_days) is not null and upper(half_days) is not null),
    constraint equipment_not_double_booked exclude using gist (equipment_id with =, half_days with &&)
);
create index equipment_booking_of_project on equipment_booking (project_id);
create index equipment_booking_of_activity on equipment_booking (activity_id);
create index equipment_booking_of_branch on equipment_booking (branch_id);
create index equipment_booking_of_equipment on equipment_booking (equipment_id);
select plumbrow_wall('equipment_booking');
