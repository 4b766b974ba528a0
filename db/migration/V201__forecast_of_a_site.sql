-- V201__forecast_of_a_site.sql  A weather forecast for one site as somebody pasted it: kept as it came, read at each use. Its
-- hours go before those of a typical year; the newest only, as an older forecast says nothing any more.
create table site_forecast (
    project_id uuid        primary key,
    branch_id  uuid        not null,
    version    bigint      not null default 0,
    content    text        not null,
    brought_at timestamptz not null,
    brought_by text        not null,
    constraint site_forecast_project foreign key (project_id) references project,
    constraint site_forecast_branch foreign key (branch_id) references branch,
    constraint site_forecast_length check (length(content) <= 60000)
);
create index site_forecast_of_branch on site_forecast (branch_id);
select plumbrow_wall('site_forecast');
