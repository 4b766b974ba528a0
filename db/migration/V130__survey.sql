-- V130__survey.sql  What was read on the site, one row for each part of a survey. A part is read and written whole, so its
-- readings are one document of names and values as written; the row's version guards two people editing the same part.
create table survey_part (
    project_id uuid        not null,
    part       text        not null,
    branch_id  uuid        not null,
    version    bigint      not null,
    readings   jsonb       not null,
    changed_at timestamptz not null,
    changed_by text        not null,
    constraint survey_part_key primary key (project_id, part),
    constraint survey_part_project foreign key (project_id) references project,
    constraint survey_part_branch foreign key (branch_id) references branch,
    constraint survey_part_known check (part in
        ('SERVICE', 'ROOF', 'GROUND', 'ROUTES', 'SHADE', 'DAY_ONE', 'ACCESS', 'LOADS', 'CLOSE')),
    constraint survey_part_readings_are_a_record check (jsonb_typeof(readings) = 'object')
);
create index survey_part_of_branch on survey_part (branch_id);
select plumbrow_wall('survey_part');

-- What a phone has sent: the id is made on the phone, so that the same sending counts once however often it arrives.
create table survey_sending (
    id         uuid        primary key,
    branch_id  uuid        not null,
    project_id uuid        not null,
    part       text        not null,
    version    bigint      not null,
    at         timestamptz not null,
    by_name    text        not null,
    constraint survey_sending_branch foreign key (branch_id) references branch,
    constraint survey_sending_project foreign key (project_id) references project
);
create index survey_sending_of_project on survey_sending (project_id);
create index survey_sending_of_branch on survey_sending (branch_id);
select plumbrow_append_only('survey_sending');
select plumbrow_wall('survey_sending');

-- A designer's remark on a part ("read leg B again"), open until somebody settles it.
create table survey_remark (
    id         uuid        primary key,
    branch_id  uuid        not null,
    project_id uuid        not null,
    part       text        not null,
    remark     text        not null,
    at         timestamptz not null,
    by_name    text        not null,
    settled_at timestamptz,
    settled_by text,
    constraint survey_remark_branch foreign key (branch_id) references branch,
    constraint survey_remark_project foreign key (project_id) references project,
    constraint survey_remark_said check (length(trim(remark)) between 1 and 400),
    constraint survey_remark_settled_by_somebody check ((settled_at is null) = (settled_by is null))
);
create index survey_remark_of_project on survey_remark (project_id);
create index survey_remark_of_branch on survey_remark (branch_id);
select plumbrow_wall('survey_remark');

-- A photo for an item of the photo list, or the reason why its subject does not exist on this site.
create table survey_photo (
    id          uuid        primary key,
    branch_id   uuid        not null,
    project_id  uuid        not null,
    item        int         not null,
    evidence_id uuid,
    reason      text,
    at          timestamptz not null,
    by_name     text        not null,
    constraint survey_photo_branch foreign key (branch_id) references branch,
    constraint survey_photo_project foreign key (project_id) references project,
    constraint survey_photo_evidence foreign key (evidence_id) references evidence,
    constraint survey_photo_item_known check (item between 1 and 24),
    constraint survey_photo_either_or check ((evidence_id is null) <> (reason is null)),
    constraint survey_photo_reason_said check (length(trim(reason)) between 1 and 200)
);
create unique index survey_photo_absent_once on survey_photo (project_id, item) where reason is not null;
create index survey_photo_of_project on survey_photo (project_id);
create index survey_photo_of_branch on survey_photo (branch_id);
create index survey_photo_of_evidence on survey_photo (evidence_id);
select plumbrow_wall('survey_photo');
