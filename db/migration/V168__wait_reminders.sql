-- V168__wait_reminders.sql  Of which wait and which of its days somebody was reminded: once, whichever node does it. A day that is
-- promised anew is reminded of anew.
create table wait_reminder (
    awaited_id uuid        not null,
    reason     text        not null,
    day        date        not null,
    branch_id  uuid        not null,
    told       text        not null,
    at         timestamptz not null,
    constraint wait_reminder_key primary key (awaited_id, reason, day),
    constraint wait_reminder_awaited foreign key (awaited_id) references awaited,
    constraint wait_reminder_branch foreign key (branch_id) references branch,
    constraint wait_reminder_reason_known check (reason in ('DUE_SOON', 'OVERDUE', 'ENDS')),
    constraint wait_reminder_told_length check (length(told) <= 400)
);
create index wait_reminder_of_branch on wait_reminder (branch_id);
select plumbrow_wall('wait_reminder');

-- Asked for every quarter of an hour, of all branches.
create index awaited_to_come on awaited (coalesce(promised_on, due_on)) where received_on is null;
