-- V160__awaited.sql  What a project waits for: permits, the utility's papers, locate tickets, deliveries, inspections. One row a
-- question asked; a renewed ticket or an inspection asked for again is a row of its own, so that lead times can be learned.
-- Digging counts only on a clear ticket with an expiry, which the database holds.
create table awaited (
    id               uuid   primary key,
    version          bigint not null default 0,
    branch_id        uuid   not null,
    project_id       uuid   not null,
    kind             text   not null,
    wait_code        text   not null,
    about            text   not null,
    owed_by          text   not null,
    utility_id       uuid,
    permit_office_id uuid,
    owed_name        text   not null,
    sent_on          date,
    promised_on      date,
    due_on           date,
    expires_on       date,
    received_on      date,
    result           text,
    paper_id         uuid,
    note             text   not null,
    constraint awaited_branch foreign key (branch_id) references branch,
    constraint awaited_project foreign key (project_id) references project,
    constraint awaited_utility foreign key (utility_id) references utility,
    constraint awaited_permit_office foreign key (permit_office_id) references permit_office,
    constraint awaited_paper foreign key (paper_id) references evidence,
    constraint awaited_kind_known check (kind in ('PERMIT', 'ZONING', 'INTERCONNECTION', 'AGREEMENT', 'PERMISSION', 'LOCATE',
        'RACKING_DELIVERY', 'MODULES_DELIVERY', 'INVERTERS_DELIVERY', 'GEAR_DELIVERY', 'GROUND_INSPECTION',
        'SERVICE_INSPECTION', 'INSPECTION', 'STRUCTURAL_LETTER', 'GROUND_TEST')),
    constraint awaited_owed_by_known check (owed_by in ('PERMIT_OFFICE', 'UTILITY', 'LOCATE_SERVICE', 'SUPPLIER', 'CUSTOMER',
        'US')),
    constraint awaited_result_known check (result in ('PASSED', 'CORRECTION', 'CLEAR', 'NOT_CLEAR')),
    constraint awaited_about_length check (length(about) <= 120),
    constraint awaited_owed_name_length check (length(owed_name) <= 120),
    constraint awaited_note_length check (length(note) <= 500),
    constraint awaited_received_was_sent check (received_on is null or (sent_on is not null and received_on >= sent_on)),
    constraint awaited_result_was_received check (result is null or received_on is not null),
    constraint awaited_clear_ticket_expires check (result <> 'CLEAR' or expires_on is not null)
);
create index awaited_of_project on awaited (project_id);
create index awaited_of_branch on awaited (branch_id, received_on);
create index awaited_of_utility on awaited (utility_id);
create index awaited_of_permit_office on awaited (permit_office_id);
create index awaited_of_paper on awaited (paper_id);
select plumbrow_wall('awaited');
