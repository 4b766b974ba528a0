-- V231__lessons_of_a_day.sql  What each person takes along from a cutover day, one row a person and day with a version. Kept with
-- what makes another day alike: the utility, whether the connection is made ahead of the main, and what is on the site.
create table day_lesson (
    window_id   uuid        not null,
    person_id   uuid        not null,
    branch_id   uuid        not null,
    utility_id  uuid,
    tap         boolean     not null,
    site_kind   text        not null,
    version     bigint      not null default 0,
    went_well   text        not null,
    next_time   text        not null,
    written_by  text        not null,
    written_at  timestamptz not null,
    constraint day_lesson_key primary key (window_id, person_id),
    constraint day_lesson_window foreign key (window_id) references outage_window,
    constraint day_lesson_branch foreign key (branch_id) references branch,
    constraint day_lesson_utility foreign key (utility_id) references utility,
    constraint day_lesson_length check (length(went_well) <= 500 and length(next_time) <= 500),
    constraint day_lesson_says_something check (length(trim(went_well || next_time)) > 0)
);
create index day_lesson_alike on day_lesson (branch_id, utility_id, tap, site_kind, written_at desc);
create index day_lesson_of_utility on day_lesson (utility_id);
select plumbrow_wall('day_lesson');
