-- V020__branch_settings.sql  What a branch decides for itself: days and hours, yard and travel, utilities, permit offices, rates,
-- waits, weather. Half-days of any room are numbered by plumbrow_half_day, so that periods of them can be compared and excluded.
create function plumbrow_half_day(day date, half text) returns int
    language sql immutable strict parallel safe
    return 2 * (day - date '2000-01-01') + case half when 'AFTERNOON' then 1 else 0 end;

create table branch_setting (
    branch_id          uuid    primary key,
    version            bigint  not null,
    working_weekdays   text    not null,
    federal_holidays   boolean not null,
    morning_start      time    not null,
    morning_end        time    not null,
    afternoon_start    time    not null,
    afternoon_end      time    not null,
    yard_address       text,
    yard_latitude_deg  double precision,
    yard_longitude_deg double precision,
    travel_speed_mph   double precision not null,
    travel_road_factor double precision not null,
    constraint branch_setting_branch foreign key (branch_id) references branch,
    constraint branch_setting_weekdays check (working_weekdays ~ '^[M-][T-][W-][T-][F-][S-][S-]$' and working_weekdays <> '-------'),
    constraint branch_setting_hours_in_order check (morning_start < morning_end and morning_end <= afternoon_start and afternoon_start < afternoon_end),
    constraint branch_setting_yard_on_earth check (
        (yard_latitude_deg is null) = (yard_longitude_deg is null)
        and yard_latitude_deg between -90 and 90 and yard_longitude_deg between -180 and 180),
    constraint branch_setting_travel_speed check (travel_speed_mph between 5 and 80),
    constraint branch_setting_travel_factor check (travel_road_factor between 1 and 3)
);
select plumbrow_wall('branch_setting');

create table utility (
    id                   uuid    primary key,
    version              bigint  not null,
    branch_id            uuid    not null,
    name                 text    not null,
    notice_working_days  int     not null,
    appointment_weekdays text    not null,
    working_weekdays     text    not null,
    federal_holidays     boolean not null,
    must_be_present      text,
    phone                text,
    email                text,
    ended_on             date,
    constraint utility_branch foreign key (branch_id) references branch,
    constraint utility_name_taken unique (branch_id, name),
    constraint utility_name_given check (length(trim(name)) between 1 and 120),
    constraint utility_notice check (notice_working_days between 0 and 60),
    constraint utility_appointment_weekdays check (appointment_weekdays ~ '^[M-][T-][W-][T-][F-][S-][S-]$' and appointment_weekdays <> '-------'),
    constraint utility_working_weekdays check (working_weekdays ~ '^[M-][T-][W-][T-][F-][S-][S-]$' and working_weekdays <> '-------')
);

-- The outage lies between off_from and off_to; with back_by, power goes off between the two and must be back by then.
create table utility_slot (
    id         uuid primary key,
    branch_id  uuid not null,
    utility_id uuid not null,
    off_from   time not null,
    off_to     time not null,
    back_by    time,
    constraint utility_slot_branch foreign key (branch_id) references branch,
    constraint utility_slot_utility foreign key (utility_id) references utility,
    constraint utility_slot_in_order check (off_from < off_to and off_to < back_by),
    constraint utility_slot_twice unique nulls not distinct (utility_id, off_from, off_to, back_by)
);
create index utility_slot_of_branch on utility_slot (branch_id);

-- Days off: of the branch itself (no utility) or of one utility.
create table closed_day (
    id         uuid primary key,
    branch_id  uuid not null,
    utility_id uuid,
    day        date not null,
    reason     text not null,
    constraint closed_day_branch foreign key (branch_id) references branch,
    constraint closed_day_utility foreign key (utility_id) references utility,
    constraint closed_day_twice unique nulls not distinct (branch_id, utility_id, day),
    constraint closed_day_reason_given check (length(trim(reason)) between 1 and 120)
);
create index closed_day_of_utility on closed_day (utility_id);

create table permit_office (
    id                       uuid   primary key,
    version                  bigint not null,
    branch_id                uuid   not null,
    name                     text   not null,
    code_edition             text   not null,
    permit_least_days        int,
    permit_usual_days        int,
    permit_most_days         int,
    inspection_least_days    int,
    inspection_usual_days    int,
    inspection_most_days     int,
    phone                    text,
    ended_on                 date,
    constraint permit_office_branch foreign key (branch_id) references branch,
    constraint permit_office_name_taken unique (branch_id, name),
    constraint permit_office_name_given check (length(trim(name)) between 1 and 120),
    constraint permit_office_edition check (code_edition in ('NEC_2014', 'NEC_2017', 'NEC_2020', 'NEC_2023', 'NEC_2026')),
    constraint permit_office_permit_wait check (
        num_nulls(permit_least_days, permit_usual_days, permit_most_days) in (0, 3)
        and permit_least_days between 0 and 1000 and permit_usual_days between permit_least_days and 1000 and permit_most_days between permit_usual_days and 1000),
    constraint permit_office_inspection_wait check (
        num_nulls(inspection_least_days, inspection_usual_days, inspection_most_days) in (0, 3)
        and inspection_least_days between 0 and 1000 and inspection_usual_days between inspection_least_days and 1000 and inspection_most_days between inspection_usual_days and 1000)
);

-- Units a day of the crew named; the shipped rows are copied when the branch opens. What a row is called, counted in and based on
-- stays with the shipped table; equipment is written KIND or KIND x2, parted by semicolons.
create table work_rate (
    branch_id       uuid   not null,
    code            text   not null,
    version         bigint not null,
    low_per_day     double precision not null,
    typical_per_day double precision not null,
    high_per_day    double precision not null,
    crew_least      int    not null,
    crew_most       int    not null,
    equipment       text   not null,
    set_up_days     double precision not null,
    constraint work_rate_key primary key (branch_id, code),
    constraint work_rate_branch foreign key (branch_id) references branch,
    constraint work_rate_in_order check (0.01 <= low_per_day and low_per_day <= typical_per_day and typical_per_day <= high_per_day and high_per_day <= 100000),
    constraint work_rate_crew check (1 <= crew_least and crew_least <= crew_most and crew_most <= 40),
    constraint work_rate_set_up check (set_up_days between 0 and 20)
);

-- Days that a job takes for a thing whatever its size.
create table fixed_time (
    branch_id    uuid   not null,
    code         text   not null,
    version      bigint not null,
    low_days     double precision not null,
    typical_days double precision not null,
    high_days    double precision not null,
    people       int    not null,
    constraint fixed_time_key primary key (branch_id, code),
    constraint fixed_time_branch foreign key (branch_id) references branch,
    constraint fixed_time_in_order check (0 < low_days and low_days <= typical_days and typical_days <= high_days and high_days <= 60),
    constraint fixed_time_people check (people between 1 and 40)
);

create table wait_time (
    branch_id     uuid    not null,
    code          text    not null,
    version       bigint  not null,
    least_days    double precision not null,
    usual_days    double precision not null,
    most_days     double precision not null,
    calendar_days boolean not null,
    constraint wait_time_key primary key (branch_id, code),
    constraint wait_time_branch foreign key (branch_id) references branch,
    constraint wait_time_in_order check (0 <= least_days and least_days <= usual_days and usual_days <= most_days and most_days <= 2000)
);

-- Half-days lost to rain, snow and mud, January to December, by family of work.
create table weather_loss (
    branch_id      uuid   not null,
    family         text   not null,
    version        bigint not null,
    lost_half_days double precision[] not null,
    constraint weather_loss_key primary key (branch_id, family),
    constraint weather_loss_branch foreign key (branch_id) references branch,
    constraint weather_loss_family check (family in ('GROUND', 'STRUCTURE', 'ROOF', 'ELECTRICAL')),
    constraint weather_loss_months check (cardinality(lost_half_days) = 12),
    constraint weather_loss_amount check (0 <= all (lost_half_days) and 40 >= all (lost_half_days))
);

select plumbrow_wall('utility');
select plumbrow_wall('utility_slot');
select plumbrow_wall('closed_day');
select plumbrow_wall('permit_office');
select plumbrow_wall('work_rate');
select plumbrow_wall('fixed_time');
select plumbrow_wall('wait_time');
select plumbrow_wall('weather_loss');
