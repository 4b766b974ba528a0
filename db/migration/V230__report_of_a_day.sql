-- V230__report_of_a_day.sql  Reports of a cutover day that were kept among the project's papers: which reading of it, with
-- the hash of its bytes, so that one sees whether the log has been corrected since. Only ever added; the newest counts.
create table day_report (
    id          uuid        primary key,
    branch_id   uuid        not null,
    window_id   uuid        not null,
    reading     text        not null,
    evidence_id uuid        not null,
    sha256      text        not null,
    kept_at     timestamptz not null,
    kept_by     text        not null,
    constraint day_report_branch foreign key (branch_id) references branch,
    constraint day_report_window foreign key (window_id) references outage_window,
    constraint day_report_evidence foreign key (evidence_id) references evidence,
    constraint day_report_reading_known check (reading in ('UTILITY', 'CUSTOMER')),
    constraint day_report_hash_whole check (sha256 ~ '^[0-9a-f]{64}$'),
    constraint day_report_once unique (window_id, reading, sha256)
);
create index day_report_of_branch on day_report (branch_id);
create index day_report_of_evidence on day_report (evidence_id);
select plumbrow_append_only('day_report');
select plumbrow_wall('day_report');
