-- V081__activities.sql  What has to be done or waited for on each project, derived from its quantities and the branch's
-- rates, with what people recorded of it: begun, done, an answer promised, a date fixed. A row is never deleted: an activity
-- that the project no longer has is dropped, so that older plans still know what they spoke of.
-- Durations are days of the crew that the rates are meant for; those of a wait are counted as wait_counting says.
create table activity (
    id                uuid    primary key,
    version           bigint  not null,
    branch_id         uuid    not null,
    project_id        uuid    not null,
    key               text    not null,
    code              text    not null,
    position          int     not null,
    words             text    not null,
    work              text    not null,
    low_days          double precision not null,
    typical_days      double precision not null,
    high_days         double precision not null,
    wait_counting     text,
    people            int     not null default 0,
    equipment         text    not null default '',
    stage             text    not null,
    dropped           boolean not null default false,
    started_on        date,
    started_half      text,
    finished_on       date,
    finished_half     text,
    done_with_stage   text,
    done_by_crew_id   uuid,
    half_days_left    int,
    answer_expected   date,
    recorded_at       timestamptz,
    recorded_by       text,
    pinned_on         date,
    pinned_half       text,
    pinned_crew_id    uuid,
    pin_reason        text,
    pinned_at         timestamptz,
    pinned_by         text,
    constraint activity_branch foreign key (branch_id) references branch,
    constraint activity_project foreign key (project_id) references project,
    constraint activity_once_per_project unique (project_id, key),
    constraint activity_work_known check (work in ('CREW', 'DESK', 'WAIT')),
    constraint activity_durations_in_order check (0 <= low_days and low_days <= typical_days and typical_days <= high_days),
    constraint activity_wait_counts check ((work = 'WAIT') = (wait_counting is not null)),
    constraint activity_stage_known check (stage in ('SURVEYED', 'DESIGNED', 'PERMITTED', 'INSTALLED', 'CUTOVER', 'COMMISSIONED')),
    constraint activity_wait_counting_known check (wait_counting in ('BRANCH', 'UTILITY', 'CALENDAR')),
    constraint activity_started_whole check ((started_on is null) = (started_half is null)),
    constraint activity_finished_whole check ((finished_on is null) = (finished_half is null)),
    constraint activity_halves_known check
        (started_half in ('MORNING', 'AFTERNOON') and finished_half in ('MORNING', 'AFTERNOON') and pinned_half in ('MORNING', 'AFTERNOON')),
    constraint activity_done_was_begun check (finished_on is null or started_on is not null),
    constraint activity_done_with_stage_is_done check (done_with_stage is null or finished_on is not null),
    constraint activity_finish_after_start check (finished_on >= started_on),
    constraint activity_left_range check (half_days_left between 1 and 400),
    constraint activity_pin_whole check
        ((pinned_on is null) = (pinned_half is null) and (pinned_on is null) = (pin_reason is null)
         and (pinned_on is null) = (pinned_at is null) and (pinned_on is null) = (pinned_by is null)),
    constraint activity_done_by_crew foreign key (done_by_crew_id) references crew,
    constraint activity_pinned_crew foreign key (pinned_crew_id) references crew,
    constraint activity_pin_crew_needs_date check (pinned_crew_id is null or pinned_on is not null)
);
create index activity_of_branch on activity (branch_id);
create index activity_of_doing_crew on activity (done_by_crew_id);
create index activity_of_pinned_crew on activity (pinned_crew_id);
select plumbrow_wall('activity');
