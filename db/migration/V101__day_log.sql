-- V101__day_log.sql  The day of a cutover, minute by minute. The steps are a copy of the procedure as it was that day;
-- what happened is only ever added. The id of an entry is made by whoever makes it (page or phone), so that the same entry sent
-- twice is stored once; order is (device, number).
create table day_log (
    id               uuid        primary key,
    version          bigint      not null,
    branch_id        uuid        not null,
    project_id       uuid        not null,
    window_id        uuid        not null,
    service          text        not null,
    generator        boolean     not null,
    person_in_charge text        not null,
    opened_at        timestamptz not null,
    opened_by        text        not null,
    closed_at        timestamptz,
    outcome          text,
    constraint day_log_branch foreign key (branch_id) references branch,
    constraint day_log_project foreign key (project_id) references project,
    constraint day_log_window foreign key (window_id) references outage_window,
    constraint day_log_one_per_window unique (window_id),
    constraint day_log_service_known check (service in
        ('SINGLE_PHASE_120_240', 'WYE_208_120', 'DELTA_240', 'HIGH_LEG_240_120', 'WYE_480_277', 'DELTA_480')),
    constraint day_log_person_given check (length(trim(person_in_charge)) between 1 and 120),
    constraint day_log_outcome_known check (outcome in ('DONE', 'REVERSED')),
    constraint day_log_closed_says_how check ((closed_at is null) = (outcome is null))
);
create index day_log_of_project on day_log (project_id);
create index day_log_of_branch on day_log (branch_id);
select plumbrow_wall('day_log');

create table day_log_step (
    day_log_id      uuid    not null,
    code            text    not null,
    branch_id       uuid    not null,
    position        int     not null,
    hold            boolean not null,
    words           text    not null,
    what            text    not null,
    who             text    not null,
    typical_minutes int     not null,
    why_not         text,
    constraint day_log_step_key primary key (day_log_id, code),
    constraint day_log_step_log foreign key (day_log_id) references day_log,
    constraint day_log_step_branch foreign key (branch_id) references branch,
    constraint day_log_step_position_taken unique (day_log_id, position),
    constraint day_log_step_code_form check (code ~ '^([1-9]|1[0-4]|H[1-5])$')
);
create index day_log_step_of_branch on day_log_step (branch_id);
select plumbrow_append_only('day_log_step');
select plumbrow_wall('day_log_step');

create table day_log_entry (
    id              uuid        primary key,
    branch_id       uuid        not null,
    day_log_id      uuid        not null,
    step            text        not null,
    kind            text        not null,
    quantity        text,
    value           text,
    reason          text,
    corrects        uuid,
    evidence_id     uuid,
    happened_at     timestamptz not null,
    phone_time      timestamptz,
    clock_offset_ms bigint,
    device          text        not null,
    number          bigint      not null,
    format          int         not null,
    stored_at       timestamptz not null,
    by_person_id    uuid,
    by_name         text        not null,
    constraint day_log_entry_branch foreign key (branch_id) references branch,
    constraint day_log_entry_log foreign key (day_log_id) references day_log,
    constraint day_log_entry_step foreign key (day_log_id, step) references day_log_step,
    constraint day_log_entry_corrects foreign key (corrects) references day_log_entry,
    constraint day_log_entry_person foreign key (by_person_id) references person,
    constraint day_log_entry_evidence foreign key (evidence_id) references evidence,
    constraint day_log_entry_number_taken unique (day_log_id, device, number),
    constraint day_log_entry_kind_known check (kind in
        ('DONE', 'READING', 'STAYS', 'WRONG', 'PHOTO', 'REVERSAL_TIME', 'REVERSE', 'REVERSE_REASON', 'POWER_ON', 'SIGNED', 'CORRECTED', 'TAKEN_BACK')),
    constraint day_log_entry_reading_whole check ((kind = 'READING') = (quantity is not null)),
    constraint day_log_entry_change_names_its_entry check ((kind in ('CORRECTED', 'TAKEN_BACK', 'STAYS')) = (corrects is not null)),
    constraint day_log_entry_change_has_reason check (kind not in ('CORRECTED', 'TAKEN_BACK') or coalesce(length(trim(reason)), 0) > 0),
    constraint day_log_entry_phone_whole check ((phone_time is null) = (clock_offset_ms is null))
);
create index day_log_entry_of_log on day_log_entry (day_log_id, step);
create index day_log_entry_of_branch on day_log_entry (branch_id);
create index day_log_entry_corrected on day_log_entry (corrects);
create index day_log_entry_of_evidence on day_log_entry (evidence_id);
create index day_log_entry_of_person on day_log_entry (by_person_id);
select plumbrow_append_only('day_log_entry');
select plumbrow_wall('day_log_entry');

-- Who passed a hold point: a person with name and trade, no account needed.
create table day_log_signature (
    entry_id    uuid primary key,
    branch_id   uuid not null,
    day_log_id  uuid not null,
    hold        text not null,
    part        text not null,
    name        text not null,
    trade       text not null,
    evidence_id uuid,
    constraint day_log_signature_branch foreign key (branch_id) references branch,
    constraint day_log_signature_entry foreign key (entry_id) references day_log_entry,
    constraint day_log_signature_hold foreign key (day_log_id, hold) references day_log_step,
    constraint day_log_signature_evidence foreign key (evidence_id) references evidence,
    constraint day_log_signature_part_known check (part in
        ('PERSON_IN_CHARGE', 'CUSTOMER', 'ELECTRICIAN', 'SECOND_PERSON', 'INSPECTOR')),
    constraint day_log_signature_name_given check (length(trim(name)) between 2 and 120),
    constraint day_log_signature_trade_given check (length(trim(trade)) between 2 and 80)
);
create index day_log_signature_of_hold on day_log_signature (day_log_id, hold);
create index day_log_signature_of_evidence on day_log_signature (evidence_id);
create index day_log_signature_of_branch on day_log_signature (branch_id);
select plumbrow_append_only('day_log_signature');
select plumbrow_wall('day_log_signature');
