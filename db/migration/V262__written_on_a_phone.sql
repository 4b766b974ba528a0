-- V262__written_on_a_phone.sql  A daily report and a step of day one may have waited on a phone without signal: when it happened
-- (at, reported_at: by the server's clock), when it came in, and what the phone's own clock said. A photo of the day may come
-- before the report of that day does, so it belongs to the day.
alter table daily_report add column received_at timestamptz;
alter table daily_report add column phone_at timestamptz;
update daily_report set received_at = reported_at;
alter table daily_report alter column received_at set not null;

alter table day_one_step add column received_at timestamptz;
alter table day_one_step add column phone_at timestamptz;
update day_one_step set received_at = at;
alter table day_one_step alter column received_at set not null;

alter table daily_report_photo add column project_id uuid;
alter table daily_report_photo add column crew_id uuid;
alter table daily_report_photo add column day date;
update daily_report_photo p set project_id = r.project_id, crew_id = r.crew_id, day = r.day
  from daily_report r where r.id = p.report_id;
alter table daily_report_photo alter column project_id set not null;
alter table daily_report_photo alter column crew_id set not null;
alter table daily_report_photo alter column day set not null;
alter table daily_report_photo drop constraint daily_report_photo_once;
alter table daily_report_photo drop column report_id;
alter table daily_report_photo add constraint daily_report_photo_once primary key (project_id, crew_id, day, evidence_id);
alter table daily_report_photo add constraint daily_report_photo_project foreign key (project_id) references project;
alter table daily_report_photo add constraint daily_report_photo_crew foreign key (crew_id) references crew;
create index daily_report_photo_of_crew on daily_report_photo (crew_id);
