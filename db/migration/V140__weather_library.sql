-- V140__weather_library.sql  The typical years of weather that a branch estimates with: files that somebody brought (kept as
-- evidence of the branch, the same file once), or twelve monthly means. Read once when they come; the summary says what
-- was found, so that no page reads 8,760 hours to show a list.
create table weather_source (
    id                 uuid             primary key,
    branch_id          uuid             not null,
    version            bigint           not null default 0,
    name               text             not null,
    origin             text             not null,
    station            text             not null,
    latitude_deg       double precision not null,
    longitude_deg      double precision not null,
    elevation_m        double precision not null,
    utc_offset_h       double precision not null,
    invented           boolean          not null,
    evidence_id        uuid,
    sha256             bytea,
    means              jsonb,
    summary            jsonb            not null,
    added_at           timestamptz      not null,
    added_by_person_id uuid,
    added_by           text             not null,
    ended_at           timestamptz,
    constraint weather_source_branch foreign key (branch_id) references branch,
    constraint weather_source_evidence foreign key (evidence_id) references evidence,
    constraint weather_source_person foreign key (added_by_person_id) references person,
    constraint weather_source_origin_known check (origin in ('EPW', 'TMY3_CSV', 'NSRDB_CSV', 'TM2', 'MONTHLY_MEANS')),
    constraint weather_source_file_or_means check
        ((evidence_id is null) = (means is not null) and (evidence_id is null) = (sha256 is null)),
    constraint weather_source_latitude_range check (latitude_deg between -90 and 90),
    constraint weather_source_longitude_range check (longitude_deg between -180 and 180),
    constraint weather_source_name_length check (length(name) between 1 and 120)
);
create index weather_source_of_branch on weather_source (branch_id);
create index weather_source_of_evidence on weather_source (evidence_id);
create index weather_source_by_person on weather_source (added_by_person_id);
create unique index weather_source_once on weather_source (branch_id, sha256) where ended_at is null;
create unique index weather_source_named_once on weather_source (branch_id, lower(name)) where ended_at is null;
select plumbrow_wall('weather_source');
