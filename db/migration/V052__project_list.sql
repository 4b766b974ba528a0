-- V052__project_list.sql  What the list of projects shows, one row a project, written in the transaction of each change;
-- later rooms tell their columns through a service. Searching goes by words in a table of its own: behind row-level
-- security an index serves only leakproof comparisons, which = and < on text are and LIKE or trigrams are not.
create table project_line (
    project_id       uuid    primary key,
    branch_id        uuid    not null,
    shown            text    not null,
    number           text    not null,
    number_year      int     not null,
    running_number   int     not null,
    name             text    not null,
    name_sorted      text    collate "C" not null,
    place            text    not null,
    stage            text,
    stage_order      int     not null,
    mounting         text,
    system_kw_dc     numeric(9, 3),
    utility_id       uuid,
    manager_id       uuid,
    manager_name     text,
    milestone        text,
    promised_on      date,
    tolerance_days   int     not null default 0,
    planned_on       date,
    late             boolean not null default false,
    acts_next        text,
    acts_what        text,
    acts_by          date,
    missing          int,
    missing_of       int,
    crew_names       text    not null default '',
    constraint project_line_project foreign key (project_id) references project,
    constraint project_line_branch foreign key (branch_id) references branch,
    constraint project_line_utility foreign key (utility_id) references utility,
    constraint project_line_manager foreign key (manager_id) references person,
    constraint project_line_shown_known check (shown in ('UNDER_WAY', 'COMMISSIONED', 'ON_HOLD', 'CALLED_OFF')),
    constraint project_line_stage_order_range check (stage_order between 0 and 7)
);
create index project_line_by_acts on project_line (branch_id, shown, acts_by, number_year, running_number);
create index project_line_by_number on project_line (branch_id, shown, number_year, running_number);
create index project_line_by_name on project_line (branch_id, shown, name_sorted, number_year, running_number);
create index project_line_by_promise on project_line (branch_id, shown, promised_on, number_year, running_number);
create index project_line_by_stage on project_line (branch_id, shown, stage_order, acts_by, number_year, running_number);
-- The same orders where nobody chose what is shown.
create index project_line_all_by_acts on project_line (branch_id, acts_by, number_year, running_number);
create index project_line_all_by_number on project_line (branch_id, number_year, running_number);
create index project_line_all_by_name on project_line (branch_id, name_sorted, number_year, running_number);
create index project_line_all_by_promise on project_line (branch_id, promised_on, number_year, running_number);
create index project_line_all_by_stage on project_line (branch_id, stage_order, acts_by, number_year, running_number);
create index project_line_of_manager on project_line (manager_id, branch_id, shown, acts_by);
create index project_line_of_utility on project_line (utility_id, branch_id, shown, acts_by);
create index project_line_late on project_line (branch_id, shown, acts_by) where late;
select plumbrow_wall('project_line');

create table project_line_crew (
    project_id uuid not null,
    branch_id  uuid not null,
    crew_id    uuid not null,
    name       text not null,
    constraint project_line_crew_key primary key (project_id, crew_id),
    constraint project_line_crew_line foreign key (project_id) references project_line,
    constraint project_line_crew_branch foreign key (branch_id) references branch
);
create index project_line_crew_of_branch on project_line_crew (branch_id, crew_id, project_id);
select plumbrow_wall('project_line_crew');

-- Every crew that was ever told, so that the list can offer them without looking through all projects.
create table project_crew_told (
    branch_id uuid not null,
    crew_id   uuid not null,
    name      text not null,
    constraint project_crew_told_key primary key (branch_id, crew_id),
    constraint project_crew_told_branch foreign key (branch_id) references branch
);
select plumbrow_wall('project_crew_told');

create table project_word (
    branch_id  uuid not null,
    word       text collate "C" not null,
    project_id uuid not null,
    constraint project_word_key primary key (branch_id, word, project_id),
    constraint project_word_line foreign key (project_id) references project_line,
    constraint project_word_branch foreign key (branch_id) references branch
);
create index project_word_of_project on project_word (project_id);
select plumbrow_wall('project_word');

-- The wall as plumbrow_wall builds it asks for the scope at each row, some microseconds each; where thousands of rows are
-- counted, the same question is asked once for the query.
create function plumbrow_ask_once(walled regclass) returns void
    language plpgsql as $$
begin
    execute format('alter policy branch_wall on %s using ('
        '(select coalesce(current_setting(''plumbrow.scope'', true), '''') = ''all'') or branch_id = any ('
        '(select string_to_array(nullif(current_setting(''plumbrow.branches'', true), ''''), '','')::uuid[])::uuid[]))', walled);
end $$;
select plumbrow_ask_once('project_line');
select plumbrow_ask_once('project_line_crew');
select plumbrow_ask_once('project_word');
