-- V061__evidence_of_a_project.sql  Evidence names its project; now that there are projects the database holds it to that.
alter table evidence add constraint evidence_project foreign key (project_id) references project;
