-- V121__outage_reminders.sql  Of which outage a customer was reminded, so that each reminder is written once, whichever node does it.
create table outage_reminder (
    window_id   uuid        not null,
    days_before int         not null,
    branch_id   uuid        not null,
    at          timestamptz not null,
    constraint outage_reminder_key primary key (window_id, days_before),
    constraint outage_reminder_window foreign key (window_id) references outage_window,
    constraint outage_reminder_branch foreign key (branch_id) references branch,
    constraint outage_reminder_days_range check (days_before between 1 and 2)
);
create index outage_reminder_of_branch on outage_reminder (branch_id);
select plumbrow_wall('outage_reminder');

-- Asked for every quarter of an hour, of all branches.
create index outage_window_to_come on outage_window (day) where state in ('BOOKED', 'NOTICE_GIVEN');
