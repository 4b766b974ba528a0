-- V100__outage_windows.sql  The hours in which a customer has no power: what decides them, what is booked, who was told.
-- A window that is moved ends and another begins, so that nobody loses sight of what was announced before.
create table outage_work (
    project_id           uuid    primary key,
    version              bigint  not null,
    branch_id            uuid    not null,
    main_panel           boolean not null default false,
    meter_base           boolean not null default false,
    new_transformer      boolean not null default false,
    current_transformers boolean not null default false,
    meters               int     not null default 1,
    old_gear             boolean not null default false,
    planned_minutes      int,
    ready_on             date,
    ready_after          text    not null default '',
    constraint outage_work_project foreign key (project_id) references project,
    constraint outage_work_branch foreign key (branch_id) references branch,
    constraint outage_work_meters_range check (meters between 1 and 12),
    constraint outage_work_minutes_range check (planned_minutes between 15 and 720)
);
create index outage_work_of_branch on outage_work (branch_id);
select plumbrow_wall('outage_work');

-- When the customer must have power. Without dates it holds every week, without times all day. Ended ones stay readable.
create table outage_blackout (
    id         uuid        primary key,
    branch_id  uuid        not null,
    project_id uuid        not null,
    first_day  date,
    last_day   date,
    weekdays   text        not null default 'MTWTFSS',
    from_time  time,
    to_time    time,
    reason     text        not null,
    made_at    timestamptz not null,
    made_by    text        not null,
    ended_at   timestamptz,
    ended_by   text,
    constraint outage_blackout_branch foreign key (branch_id) references branch,
    constraint outage_blackout_project foreign key (project_id) references project,
    constraint outage_blackout_days_whole check ((first_day is null) = (last_day is null)),
    constraint outage_blackout_days_in_order check (first_day <= last_day),
    constraint outage_blackout_times_whole check ((from_time is null) = (to_time is null)),
    constraint outage_blackout_times_in_order check (from_time < to_time),
    constraint outage_blackout_says_when check (first_day is not null or from_time is not null),
    constraint outage_blackout_weekdays_form check (weekdays ~ '^[M-][T-][W-][T-][F-][S-][S-]$' and weekdays <> '-------'),
    constraint outage_blackout_reason_given check (length(trim(reason)) between 1 and 200),
    constraint outage_blackout_end_says_who check ((ended_at is null) = (ended_by is null))
);
create index outage_blackout_of_project on outage_blackout (project_id);
create index outage_blackout_of_branch on outage_blackout (branch_id);
select plumbrow_wall('outage_blackout');

create table outage_window (
    id                   uuid        primary key,
    version              bigint      not null,
    branch_id            uuid        not null,
    project_id           uuid        not null,
    day                  date        not null,
    start_time           time        not null,
    outage_minutes       int         not null,
    crew_id              uuid,
    state                text        not null,
    state_reason         text,
    rain_day             date,
    rain_start           time,
    utility_told_at      timestamptz,
    utility_told_how     text,
    utility_confirmation text,
    utility_confirmed_at timestamptz,
    customer_told_at     timestamptz,
    customer_told_how    text,
    customer_answer      text,
    customer_answer_note text,
    customer_answered_at timestamptz,
    customer_answered_by text,
    moved_to             uuid,
    power_off_at         timestamptz,
    power_on_at          timestamptz,
    made_at              timestamptz not null,
    made_by              text        not null,
    constraint outage_window_branch foreign key (branch_id) references branch,
    constraint outage_window_project foreign key (project_id) references project,
    constraint outage_window_crew foreign key (crew_id) references crew,
    constraint outage_window_moved_to foreign key (moved_to) references outage_window deferrable initially deferred,
    constraint outage_window_minutes_range check (outage_minutes between 15 and 720),
    constraint outage_window_within_the_day check (start_time + outage_minutes * interval '1 minute' > start_time),
    constraint outage_window_state_known check
        (state in ('PROPOSED', 'BOOKED', 'NOTICE_GIVEN', 'DONE', 'CANCELLED', 'MOVED')),
    constraint outage_window_end_has_reason check (state not in ('CANCELLED', 'MOVED') or coalesce(length(trim(state_reason)), 0) > 0),
    constraint outage_window_rain_whole check ((rain_day is null) = (rain_start is null)),
    constraint outage_window_rain_later check (rain_day > day),
    constraint outage_window_told_says_how check
        ((utility_told_at is null) = (utility_told_how is null) and (customer_told_at is null) = (customer_told_how is null)),
    constraint outage_window_notice_given_was_told check
        (state <> 'NOTICE_GIVEN' or (utility_told_at is not null and customer_told_at is not null)),
    constraint outage_window_answer_known check (customer_answer in ('AGREED', 'DOES_NOT_WORK')),
    constraint outage_window_answer_whole check
        ((customer_answer is null) = (customer_answered_at is null) and (customer_answer is null) = (customer_answered_by is null)),
    constraint outage_window_confirmation_says_when check ((utility_confirmation is null) = (utility_confirmed_at is null)),
    constraint outage_window_power_in_order check (power_off_at <= power_on_at),
    constraint outage_window_done_says_when check (state <> 'DONE' or (power_off_at is not null and power_on_at is not null)),
    constraint outage_window_moved_says_where check ((state = 'MOVED') = (moved_to is not null))
);
create unique index outage_window_one_live on outage_window (project_id) where state in ('PROPOSED', 'BOOKED', 'NOTICE_GIVEN');
create index outage_window_of_project on outage_window (project_id, made_at desc);
create index outage_window_of_branch on outage_window (branch_id, day);
create index outage_window_of_crew on outage_window (crew_id);
create index outage_window_moved_from on outage_window (moved_to);
select plumbrow_wall('outage_window');
