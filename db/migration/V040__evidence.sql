-- V040__evidence.sql  Photos, documents, data files and signatures. Files are kept once a branch under their SHA-256;
-- an evidence row says who brought which file for what. Nothing is erased: what should not be shown is hidden.
create table stored_file (
    branch_id     uuid        not null,
    sha256        bytea       not null,
    source_sha256 bytea       not null,
    media_type    text        not null,
    size_bytes    bigint      not null,
    bytes         bytea       not null,
    thumbnail     bytea,
    stored_at     timestamptz not null,
    constraint stored_file_key primary key (branch_id, sha256),
    constraint stored_file_branch foreign key (branch_id) references branch,
    constraint stored_file_hash_length check (length(sha256) = 32 and length(source_sha256) = 32),
    constraint stored_file_size_true check (size_bytes = length(bytes)),
    constraint stored_file_type_known check (media_type in
        ('image/jpeg', 'image/png', 'application/pdf', 'text/csv', 'application/xml', 'text/plain'))
);
create index stored_file_by_source on stored_file (branch_id, source_sha256);
-- Pictures do not shrink further; the server's own compression would only cost time.
alter table stored_file alter column bytes set storage external;
alter table stored_file alter column thumbnail set storage external;
select plumbrow_append_only('stored_file');
select plumbrow_wall('stored_file');

create table evidence (
    id            uuid        primary key,
    branch_id     uuid        not null,
    project_id    uuid,
    kind          text        not null,
    sha256        bytea,
    name          text        not null,
    caption       text        not null default '',
    taken_at      timestamp,
    latitude_deg  numeric(9, 6),
    longitude_deg numeric(9, 6),
    signer_name   text,
    signer_trade  text,
    signed_text   text,
    at            timestamptz not null,
    by_person_id  uuid,
    by_name       text        not null,
    hidden_at     timestamptz,
    hidden_by     text,
    hidden_reason text,
    constraint evidence_branch foreign key (branch_id) references branch,
    constraint evidence_file foreign key (branch_id, sha256) references stored_file,
    constraint evidence_person foreign key (by_person_id) references person,
    constraint evidence_kind_known check (kind in ('PHOTO', 'DOCUMENT', 'DATA', 'SIGNATURE')),
    constraint evidence_has_file_or_signature check (sha256 is not null or kind = 'SIGNATURE'),
    constraint evidence_signature_complete check
        (kind <> 'SIGNATURE' or (signer_name is not null and signer_trade is not null and signed_text is not null)),
    constraint evidence_hidden_says_why check
        ((hidden_at is null) = (hidden_reason is null) and (hidden_at is null) = (hidden_by is null)),
    constraint evidence_latitude_range check (latitude_deg between -90 and 90),
    constraint evidence_longitude_range check (longitude_deg between -180 and 180)
);
create index evidence_of_project on evidence (project_id, at);
create index evidence_of_branch on evidence (branch_id);
create index evidence_of_file on evidence (branch_id, sha256);
create index evidence_by_person on evidence (by_person_id);
select plumbrow_wall('evidence');

-- Where a photo was taken is a person's whereabouts too: kept only where the branch wants it.
create table evidence_setting (
    branch_id         uuid    primary key,
    version           bigint  not null default 0,
    keeps_photo_place boolean not null,
    constraint evidence_setting_branch foreign key (branch_id) references branch
);
select plumbrow_wall('evidence_setting');
