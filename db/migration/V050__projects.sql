-- V050__projects.sql  A project and its parts. Each part (site, contract, people, customer) has a version of its own,
-- so that two people who edit different parts never meet.
create table project_number (
    branch_id uuid   not null,
    year      int    not null,
    last      int    not null,
    constraint project_number_key primary key (branch_id, year),
    constraint project_number_branch foreign key (branch_id) references branch,
    constraint project_number_counts_up check (last >= 1)
);
select plumbrow_wall('project_number');

create table project (
    id              uuid        primary key,
    version         bigint      not null,
    branch_id       uuid        not null,
    number          text        not null,
    number_year     int         not null,
    running_number  int         not null,
    name            text        not null,
    stage           text,
    standing        text        not null,
    standing_reason text,
    standing_by     text,
    standing_since  timestamptz not null,
    standing_until  date,
    weight          int         not null default 1,
    weight_reason   text,
    reference       text,
    created_at      timestamptz not null,
    created_by      text        not null,
    constraint project_branch foreign key (branch_id) references branch,
    constraint project_number_taken unique (branch_id, number_year, running_number),
    constraint project_number_written_taken unique (number),
    constraint project_reference_taken unique (branch_id, reference),
    constraint project_name_given check (length(trim(name)) between 1 and 120),
    constraint project_stage_known check (stage in
        ('SIGNED', 'SURVEYED', 'DESIGNED', 'PERMITTED', 'INSTALLED', 'CUTOVER', 'COMMISSIONED')),
    constraint project_standing_known check (standing in ('OPEN', 'ON_HOLD', 'CALLED_OFF')),
    constraint project_standing_has_reason check (standing = 'OPEN' or standing_reason is not null),
    constraint project_weight_range check (weight between 1 and 5),
    constraint project_weight_has_reason check (weight = 1 or weight_reason is not null)
);
create index project_of_branch on project (branch_id, standing, stage);
select plumbrow_wall('project');

-- Each time a stage was reached, and each time somebody went back: the newest row of a stage without undone_at holds.
create table project_stage_reached (
    id               uuid        primary key,
    branch_id        uuid        not null,
    project_id       uuid        not null,
    stage            text        not null,
    reached_on       date        not null,
    at               timestamptz not null,
    by_name          text        not null,
    before_plumbrow  boolean     not null default false,
    undone_at        timestamptz,
    undone_reason    text,
    constraint project_stage_reached_branch foreign key (branch_id) references branch,
    constraint project_stage_reached_project foreign key (project_id) references project,
    constraint project_stage_reached_known check (stage in
        ('SIGNED', 'SURVEYED', 'DESIGNED', 'PERMITTED', 'INSTALLED', 'CUTOVER', 'COMMISSIONED')),
    constraint project_stage_undone_has_reason check ((undone_at is null) = (undone_reason is null))
);
create index project_stage_reached_of_project on project_stage_reached (project_id);
create index project_stage_reached_of_branch on project_stage_reached (branch_id);
create unique index project_stage_holds_once on project_stage_reached (project_id, stage) where undone_at is null;
select plumbrow_wall('project_stage_reached');

create table project_site (
    project_id       uuid    primary key,
    version          bigint  not null,
    branch_id        uuid    not null,
    street           text,
    town             text,
    state            text,
    zip              text,
    latitude_deg     numeric(9, 6),
    longitude_deg    numeric(9, 6),
    loads            text    not null default '',
    generator        boolean not null default false,
    three_phase      boolean not null default false,
    supply_side_tap  boolean not null default false,
    utility_id       uuid,
    permit_office_id uuid,
    meter_numbers    text    not null default '',
    constraint project_site_utility foreign key (utility_id) references utility,
    constraint project_site_permit_office foreign key (permit_office_id) references permit_office,
    constraint project_site_project foreign key (project_id) references project,
    constraint project_site_branch foreign key (branch_id) references branch,
    constraint project_site_latitude_range check (latitude_deg between -90 and 90),
    constraint project_site_longitude_range check (longitude_deg between -180 and 180),
    constraint project_site_place_whole check ((latitude_deg is null) = (longitude_deg is null)),
    constraint project_site_loads_known check
        (loads ~ '^((HOME|POULTRY|DAIRY|SWINE|COLD_STORE|GREENHOUSE)(,(HOME|POULTRY|DAIRY|SWINE|COLD_STORE|GREENHOUSE))*)?$')
);
create index project_site_of_branch on project_site (branch_id);
create index project_site_of_utility on project_site (utility_id);
create index project_site_of_permit_office on project_site (permit_office_id);
select plumbrow_wall('project_site');

create table project_contract (
    project_id              uuid   primary key,
    version                 bigint not null,
    branch_id               uuid   not null,
    system_kw_dc            numeric(9, 3),
    system_kw_ac            numeric(9, 3),
    inverters               int,
    inverter_kw_ac          numeric(8, 3),
    posts                   int,
    strings                 int,
    trench_ft               int,
    bore_ft                 int,
    guaranteed_kwh_per_year int,
    price_usd               numeric(12, 2),
    constraint project_contract_project foreign key (project_id) references project,
    constraint project_contract_branch foreign key (branch_id) references branch,
    constraint project_contract_system_dc_range check (system_kw_dc > 0 and system_kw_dc <= 20000),
    constraint project_contract_system_ac_range check (system_kw_ac > 0 and system_kw_ac <= 20000),
    constraint project_contract_inverters_range check (inverters between 1 and 5000),
    constraint project_contract_inverter_range check (inverter_kw_ac > 0 and inverter_kw_ac <= 5000),
    constraint project_contract_quantities_range check
        (posts between 0 and 20000 and strings between 0 and 20000 and trench_ft between 0 and 50000 and bore_ft between 0 and 20000),
    constraint project_contract_guarantee_range check (guaranteed_kwh_per_year between 1 and 50000000),
    constraint project_contract_price_range check (price_usd between 0 and 100000000)
);
create index project_contract_of_branch on project_contract (branch_id);
select plumbrow_wall('project_contract');

create table project_array (
    project_id  uuid not null,
    position    int  not null,
    branch_id   uuid not null,
    mounting    text not null,
    modules     int,
    module_w    numeric(6, 2),
    tilt_deg    numeric(5, 2),
    azimuth_deg numeric(6, 2),
    constraint project_array_key primary key (project_id, position),
    constraint project_array_contract foreign key (project_id) references project_contract,
    constraint project_array_branch foreign key (branch_id) references branch,
    constraint project_array_mounting_known check (mounting in ('GROUND', 'FLAT_ROOF', 'PITCHED_ROOF')),
    constraint project_array_modules_range check (modules between 1 and 100000),
    constraint project_array_module_range check (module_w between 10 and 1000),
    constraint project_array_tilt_range check (tilt_deg between 0 and 90),
    constraint project_array_azimuth_range check (azimuth_deg >= 0 and azimuth_deg < 360)
);
create index project_array_of_branch on project_array (branch_id);
select plumbrow_wall('project_array');

-- Who acts for what. A name without an account is allowed: electricians and inspectors need none.
create table project_people (
    project_id uuid   primary key,
    version    bigint not null,
    branch_id  uuid   not null,
    constraint project_people_project foreign key (project_id) references project,
    constraint project_people_branch foreign key (branch_id) references branch
);
create index project_people_of_branch on project_people (branch_id);
select plumbrow_wall('project_people');

create table project_duty (
    project_id uuid not null,
    branch_id  uuid not null,
    duty       text not null,
    person_id  uuid,
    name       text not null,
    constraint project_duty_key primary key (project_id, duty),
    constraint project_duty_people foreign key (project_id) references project_people,
    constraint project_duty_branch foreign key (branch_id) references branch,
    constraint project_duty_person foreign key (person_id) references person,
    constraint project_duty_known check
        (duty in ('PROJECT_MANAGER', 'SURVEYOR', 'DESIGNER', 'PERMITS', 'ELECTRICIAN', 'PERSON_IN_CHARGE')),
    constraint project_duty_name_given check (length(trim(name)) between 1 and 120)
);
create index project_duty_of_person on project_duty (person_id);
create index project_duty_of_branch on project_duty (branch_id);
select plumbrow_wall('project_duty');

-- The customer's own data: rows of their own, so that a person can be forgotten without touching the journal.
-- A journal line names the row, never what stands in it; what a changed row was before is kept in project_was.
create table project_customer (
    project_id uuid   primary key,
    version    bigint not null,
    branch_id  uuid   not null,
    changes    int    not null default 0,
    constraint project_customer_project foreign key (project_id) references project,
    constraint project_customer_branch foreign key (branch_id) references branch
);
create index project_customer_of_branch on project_customer (branch_id);
select plumbrow_wall('project_customer');

create table project_contact (
    id         uuid        primary key,
    version    bigint      not null,
    branch_id  uuid        not null,
    project_id uuid        not null,
    kind       text        not null,
    name       text        not null,
    part       text        not null default '',
    phone      text        not null default '',
    email      text        not null default '',
    language   text        not null default 'en',
    decides    boolean     not null default false,
    since      timestamptz not null,
    ended_at   timestamptz,
    constraint project_contact_branch foreign key (branch_id) references branch,
    constraint project_contact_customer foreign key (project_id) references project_customer,
    constraint project_contact_kind_known check (kind in ('CUSTOMER', 'CONTACT')),
    constraint project_contact_language_known check (language in ('en', 'es')),
    constraint project_contact_name_length check (length(name) <= 120)
);
create index project_contact_of_project on project_contact (project_id, kind);
create index project_contact_of_branch on project_contact (branch_id);
select plumbrow_wall('project_contact');

-- What a name, an address or a contact was before it was changed: kept beside the journal for the same reason.
create table project_was (
    id         uuid        primary key,
    branch_id  uuid        not null,
    project_id uuid        not null,
    what       text        not null,
    was        text        not null,
    until      timestamptz not null,
    constraint project_was_branch foreign key (branch_id) references branch,
    constraint project_was_project foreign key (project_id) references project,
    constraint project_was_known check (what in ('NAME', 'PLACE', 'CONTACT'))
);
create index project_was_of_project on project_was (project_id);
create index project_was_of_branch on project_was (branch_id);
select plumbrow_wall('project_was');

-- A promise is never overwritten: a new one is added, the newest of the project counts.
create table project_promise (
    id             uuid        primary key,
    branch_id      uuid        not null,
    project_id     uuid        not null,
    position       int         not null,
    milestone      text        not null,
    promised_on    date        not null,
    tolerance_days int         not null default 0,
    promised_by    text        not null,
    reason         text        not null default '',
    at             timestamptz not null,
    by_name        text        not null,
    constraint project_promise_branch foreign key (branch_id) references branch,
    constraint project_promise_project foreign key (project_id) references project,
    constraint project_promise_added_meanwhile unique (project_id, position),
    constraint project_promise_tolerance_range check (tolerance_days between 0 and 365),
    constraint project_promise_milestone_known check (milestone in
        ('SURVEY_DONE', 'DESIGN_DONE', 'PERMITS_IN_HAND', 'AGREEMENT_SIGNED', 'ARRAY_BUILT', 'DISCONNECT_SET',
         'ELECTRICAL_COMPLETION', 'INSPECTION_PASSED', 'CUTOVER_DONE', 'PERMISSION_GIVEN', 'SYSTEM_ON', 'HANDED_OVER'))
);
create index project_promise_of_branch on project_promise (branch_id);
select plumbrow_append_only('project_promise');
select plumbrow_wall('project_promise');
