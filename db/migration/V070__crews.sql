-- V070__crews.sql  Crews and shared equipment, and when they are away. Two absences of one crew (or one machine) never overlap:
-- two people entering them at once is the case that matters. Half-days are numbered by plumbrow_half_day.
create table crew (
    id             uuid   primary key,
    version        bigint not null,
    branch_id      uuid   not null,
    name           text   not null,
    size           int    not null,
    skills         text[] not null,
    lead_person_id uuid,
    from_day       date   not null,
    until_day      date,
    constraint crew_branch foreign key (branch_id) references branch,
    constraint crew_lead_person foreign key (lead_person_id) references person,
    constraint crew_name_taken unique (branch_id, name),
    constraint crew_name_given check (length(trim(name)) between 1 and 60),
    constraint crew_size check (size between 1 and 20),
    constraint crew_skills check (cardinality(skills) >= 1 and skills <@ array['INSTALLER', 'ROOF', 'POST_OPERATOR',
        'EARTH_OPERATOR', 'BORE_OPERATOR', 'ELECTRICIAN', 'SERVICE']),
    constraint crew_days_in_order check (until_day >= from_day)
);
create index crew_of_lead on crew (lead_person_id);
select plumbrow_wall('crew');

create table crew_absence (
    id         uuid primary key,
    branch_id  uuid not null,
    crew_id    uuid not null,
    first_day  date not null,
    first_half text not null,
    last_day   date not null,
    last_half  text not null,
    reason     text not null,
    note       text not null,
    half_days  int4range not null generated always as (int4range(
        plumbrow_half_day(first_day, first_half), plumbrow_half_day(last_day, last_half), '[]')) stored,
    constraint crew_absence_branch foreign key (branch_id) references branch,
    constraint crew_absence_crew foreign key (crew_id) references crew,
    constraint crew_absence_halves check (first_half in ('MORNING', 'AFTERNOON') and last_half in ('MORNING', 'AFTERNOON')),
    constraint crew_absence_reason check (reason in ('TRAINING', 'HOLIDAY', 'ILLNESS', 'LENT_OUT', 'OTHER')),
    constraint crew_absence_note_short check (length(note) <= 200),
    constraint crew_absence_overlaps exclude using gist (crew_id with =, half_days with &&)
);
create index crew_absence_of_branch on crew_absence (branch_id, last_day);
create index crew_absence_of_crew on crew_absence (crew_id);
select plumbrow_wall('crew_absence');

-- One row a machine, so that "two of them are away" is two rows and the database can hold each.
create table shared_equipment (
    id         uuid   primary key,
    version    bigint not null,
    branch_id  uuid   not null,
    kind       text   not null,
    name       text   not null,
    from_day   date   not null,
    until_day  date,
    constraint shared_equipment_branch foreign key (branch_id) references branch,
    constraint shared_equipment_name_taken unique (branch_id, name),
    constraint shared_equipment_name_given check (length(trim(name)) between 1 and 60),
    constraint shared_equipment_kind check (kind in ('POST_DRIVER', 'SCREW_DRIVE', 'AUGER', 'MIXER', 'HOIST', 'TELEHANDLER',
        'LADDER_LIFT', 'FALL_PROTECTION', 'CART', 'LIFT', 'TRENCHER', 'BORE_RIG', 'LOCATOR', 'ROCK_SAW', 'CABLE_PULLER',
        'TORQUE_TOOLS', 'TEST_SET', 'TRACTOR')),
    constraint shared_equipment_days_in_order check (until_day >= from_day)
);
select plumbrow_wall('shared_equipment');

create table equipment_absence (
    id           uuid primary key,
    branch_id    uuid not null,
    equipment_id uuid not null,
    first_day    date not null,
    first_half   text not null,
    last_day     date not null,
    last_half    text not null,
    reason       text not null,
    note         text not null,
    half_days    int4range not null generated always as (int4range(
        plumbrow_half_day(first_day, first_half), plumbrow_half_day(last_day, last_half), '[]')) stored,
    constraint equipment_absence_branch foreign key (branch_id) references branch,
    constraint equipment_absence_equipment foreign key (equipment_id) references shared_equipment,
    constraint equipment_absence_halves check (first_half in ('MORNING', 'AFTERNOON') and last_half in ('MORNING', 'AFTERNOON')),
    constraint equipment_absence_reason check (reason in ('REPAIR', 'LENT_OUT', 'OTHER')),
    constraint equipment_absence_note_short check (length(note) <= 200),
    constraint equipment_absence_overlaps exclude using gist (equipment_id with =, half_days with &&)
);
create index equipment_absence_of_branch on equipment_absence (branch_id, last_day);
create index equipment_absence_of_equipment on equipment_absence (equipment_id);
select plumbrow_wall('equipment_absence');
