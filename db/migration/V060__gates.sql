-- V060__gates.sql  The gates between the stages. An item is a row from its first answer on, with a version of its own, so
-- that two people at different items never meet; it keeps what was asked then, so that a changed template rewrites
-- nothing. What has not been answered has no row: it comes from the branch's template.

-- How a branch departs from the shipped checklists: changed or switched-off items, and items of its own.
create table gate_template_item (
    branch_id  uuid          not null,
    item       text          not null,
    version    bigint        not null default 0,
    own        boolean       not null,
    switched_off boolean     not null default false,
    words      text          not null,
    hint       text          not null default '',
    unit       text          not null default '',
    low        numeric(14, 4),
    high       numeric(14, 4),
    required   boolean       not null,
    kinds      text,
    condition  text,
    duty       text,
    constraint gate_template_item_key primary key (branch_id, item),
    constraint gate_template_item_branch foreign key (branch_id) references branch,
    constraint gate_template_item_code check
        (item ~ '^(signed|surveyed|designed|permitted|installed|cutover|commissioned)\.[1-9][0-9]{0,2}$'),
    constraint gate_template_item_words_given check (length(trim(words)) between 1 and 200),
    constraint gate_template_item_hint_length check (length(hint) <= 300),
    constraint gate_template_item_limits_in_order check (low <= high),
    constraint gate_template_item_own_is_whole check
        (own = (kinds is not null) and own = (condition is not null) and own = (duty is not null))
);
select plumbrow_wall('gate_template_item');

create table gate_answer (
    id          uuid          primary key,
    version     bigint        not null,
    branch_id   uuid          not null,
    project_id  uuid          not null,
    item        text          not null,
    stand       text          not null,
    words       text          not null,
    kinds       text          not null,
    unit        text          not null,
    low         numeric(14, 4),
    high        numeric(14, 4),
    least       int           not null,
    required    boolean       not null,
    safety      boolean       not null,
    reason      text,
    stand_by    text,
    stand_at    timestamptz,
    waits_on    text,
    promised_on date,
    constraint gate_answer_branch foreign key (branch_id) references branch,
    constraint gate_answer_project foreign key (project_id) references project,
    constraint gate_answer_once unique (project_id, item),
    constraint gate_answer_stand_known check (stand in ('ASKED', 'WAIVED', 'NOT_APPLICABLE')),
    constraint gate_answer_safety_never_waived check (not (safety and stand = 'WAIVED')),
    constraint gate_answer_says_why check
        ((stand = 'ASKED') = (reason is null) and (stand = 'ASKED') = (stand_by is null) and (stand = 'ASKED') = (stand_at is null)),
    constraint gate_answer_promise_names_whom check (promised_on is null or waits_on is not null),
    constraint gate_answer_least_range check (least between 1 and 20)
);
create index gate_answer_of_branch on gate_answer (branch_id);
select plumbrow_wall('gate_answer');

-- One part of an answer: a tick, a reading, a photo… Parts end, they are never erased; the versions of the item between
-- which a part held let one act be undone.
create table gate_answer_part (
    id            uuid          primary key,
    branch_id     uuid          not null,
    project_id    uuid          not null,
    answer_id     uuid          not null,
    kind          text          not null,
    number        numeric(18, 6),
    text          text          not null default '',
    label         text          not null default '',
    on_date       date,
    evidence_id   uuid,
    note          text          not null default '',
    at            timestamptz   not null,
    by_person_id  uuid,
    by_name       text          not null,
    since_version bigint        not null,
    ended_version bigint,
    constraint gate_answer_part_branch foreign key (branch_id) references branch,
    constraint gate_answer_part_project foreign key (project_id) references project,
    constraint gate_answer_part_answer foreign key (answer_id) references gate_answer,
    constraint gate_answer_part_evidence foreign key (evidence_id) references evidence,
    constraint gate_answer_part_person foreign key (by_person_id) references person,
    constraint gate_answer_part_kind_known check
        (kind in ('CONFIRMATION', 'READING', 'PHOTO', 'DOCUMENT', 'DATE', 'SIGNATURE')),
    constraint gate_answer_part_has_what_its_kind_says check (
        case kind when 'READING' then number is not null or text <> ''
                  when 'DATE' then on_date is not null
                  when 'CONFIRMATION' then true
                  else evidence_id is not null end),
    constraint gate_answer_part_versions_in_order check (ended_version is null or ended_version > since_version)
);
create index gate_answer_part_of_answer on gate_answer_part (answer_id);
create index gate_answer_part_of_project on gate_answer_part (project_id);
create index gate_answer_part_of_branch on gate_answer_part (branch_id);
create index gate_answer_part_of_evidence on gate_answer_part (evidence_id);
create index gate_answer_part_of_person on gate_answer_part (by_person_id);
select plumbrow_wall('gate_answer_part');

-- Each time a gate was passed, with what was found at each item then.
create table gate_passage (
    id           uuid        primary key,
    branch_id    uuid        not null,
    project_id   uuid        not null,
    stage        text        not null,
    reached_on   date        not null,
    findings     text        not null,
    at           timestamptz not null,
    by_person_id uuid,
    by_name      text        not null,
    constraint gate_passage_branch foreign key (branch_id) references branch,
    constraint gate_passage_project foreign key (project_id) references project,
    constraint gate_passage_person foreign key (by_person_id) references person,
    constraint gate_passage_stage_known check (stage in
        ('SIGNED', 'SURVEYED', 'DESIGNED', 'PERMITTED', 'INSTALLED', 'CUTOVER', 'COMMISSIONED'))
);
create index gate_passage_of_project on gate_passage (project_id, stage, at);
create index gate_passage_of_branch on gate_passage (branch_id);
create index gate_passage_of_person on gate_passage (by_person_id);
select plumbrow_append_only('gate_passage');
select plumbrow_wall('gate_passage');
