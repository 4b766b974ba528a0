-- V170__plan_moves.sql  What managers moved: each start settled by hand or left to the plan again, in the order of the branch,
-- with the state before it, so that the last move can be taken back. Whoever settles a start says which move they saw last; a
-- number can be taken once, so of two at the same moment one is told.
create table plan_move (
    branch_id     uuid        not null,
    number        bigint      not null,
    activity_id   uuid        not null,
    was_on        date,
    was_half      text,
    was_crew_id   uuid,
    was_reason    text,
    version_after bigint      not null,
    sentence      text        not null,
    undoes        bigint,
    at            timestamptz not null,
    by_person_id  uuid,
    by_name       text        not null,
    constraint plan_move_key primary key (branch_id, number),
    constraint plan_move_branch foreign key (branch_id) references branch,
    constraint plan_move_activity foreign key (activity_id) references activity,
    constraint plan_move_was_crew foreign key (was_crew_id) references crew,
    constraint plan_move_undone foreign key (branch_id, undoes) references plan_move,
    constraint plan_move_undone_once unique (branch_id, undoes),
    constraint plan_move_undoes_earlier check (undoes < number),
    constraint plan_move_numbers_from_one check (number >= 1),
    constraint plan_move_was_half_known check (was_half in ('MORNING', 'AFTERNOON')),
    constraint plan_move_was_whole check
        ((was_on is null) = (was_half is null) and (was_on is null) = (was_reason is null)
         and (was_crew_id is null or was_on is not null))
);
create index plan_move_of_activity on plan_move (activity_id);
create index plan_move_of_crew on plan_move (was_crew_id);
select plumbrow_append_only('plan_move');
select plumbrow_wall('plan_move');
