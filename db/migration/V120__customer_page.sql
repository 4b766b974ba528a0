-- V120__customer_page.sql  What a customer is shown on the page behind the private link, and what they answer there.
-- Nothing of a project is shown because it is there: a paper, a photo or a phone number is shown because somebody chose it.
create table customer_page (
    project_id        uuid        primary key,
    version           bigint      not null,
    branch_id         uuid        not null,
    shut_off_place    text        not null default '',
    shut_off_photo_id uuid,
    message           text        not null default '',
    changed_at        timestamptz not null,
    changed_by        text        not null,
    constraint customer_page_project foreign key (project_id) references project,
    constraint customer_page_branch foreign key (branch_id) references branch,
    constraint customer_page_photo foreign key (shut_off_photo_id) references evidence,
    constraint customer_page_place_length check (length(shut_off_place) <= 300),
    constraint customer_page_message_length check (length(message) <= 500)
);
create index customer_page_of_branch on customer_page (branch_id);
create index customer_page_of_photo on customer_page (shut_off_photo_id);
select plumbrow_wall('customer_page');

-- A paper is shown under a title written for the customer; its file name and caption are the branch's own.
create table customer_paper (
    project_id  uuid        not null,
    evidence_id uuid        not null,
    branch_id   uuid        not null,
    slot        int         not null,
    title       text        not null,
    shared_at   timestamptz not null,
    shared_by   text        not null,
    ended_at    timestamptz,
    constraint customer_paper_key primary key (project_id, evidence_id),
    constraint customer_paper_slot_once unique (project_id, slot),
    constraint customer_paper_project foreign key (project_id) references project,
    constraint customer_paper_evidence foreign key (evidence_id) references evidence,
    constraint customer_paper_branch foreign key (branch_id) references branch,
    constraint customer_paper_slot_range check (slot >= 1),
    constraint customer_paper_title_given check (length(trim(title)) between 1 and 80)
);
create index customer_paper_of_evidence on customer_paper (evidence_id);
create index customer_paper_of_branch on customer_paper (branch_id);
select plumbrow_wall('customer_paper');

-- How often the page was opened on a day; not by whom, from where or with what.
create table customer_visit (
    project_id uuid not null,
    day        date not null,
    branch_id  uuid not null,
    opens      int  not null,
    constraint customer_visit_key primary key (project_id, day),
    constraint customer_visit_project foreign key (project_id) references project,
    constraint customer_visit_branch foreign key (branch_id) references branch,
    constraint customer_visit_opens_range check (opens >= 1)
);
create index customer_visit_of_branch on customer_visit (branch_id);
select plumbrow_wall('customer_visit');

-- What was answered to the day of an outage: every answer, also those that a later one took the place of. Names and
-- reasons are the customer's own words; they can be blanked, so they stand in no journal line.
create table customer_answer (
    id         uuid        primary key,
    branch_id  uuid        not null,
    project_id uuid        not null,
    window_id  uuid        not null,
    contact_id uuid        not null,
    day        date        not null,
    agrees     boolean     not null,
    reason     text        not null,
    name       text        not null,
    at         timestamptz not null,
    constraint customer_answer_branch foreign key (branch_id) references branch,
    constraint customer_answer_project foreign key (project_id) references project,
    constraint customer_answer_window foreign key (window_id) references outage_window,
    constraint customer_answer_contact foreign key (contact_id) references project_contact,
    constraint customer_answer_reason_length check (length(reason) <= 200),
    constraint customer_answer_name_length check (length(name) <= 80)
);
create index customer_answer_of_project on customer_answer (project_id, at desc);
create index customer_answer_of_window on customer_answer (window_id);
create index customer_answer_of_contact on customer_answer (contact_id);
create index customer_answer_of_branch on customer_answer (branch_id);
select plumbrow_wall('customer_answer');

-- Under which number customers reach one of our people. Written once, shown on every page on which that person is named.
create table duty_phone (
    branch_id  uuid   not null,
    person_key text   not null,
    version    bigint not null,
    phone      text   not null,
    constraint duty_phone_key primary key (branch_id, person_key),
    constraint duty_phone_branch foreign key (branch_id) references branch,
    constraint duty_phone_length check (length(phone) <= 40)
);
select plumbrow_wall('duty_phone');
