-- V001__the_wall.sql  What every later migration uses: the wall between branches and the refusal to rewrite history.
-- A transaction carries its scope in two settings (plumbrow.scope, plumbrow.branches); without them no row is seen.
create extension if not exists btree_gist;

create function plumbrow_sees(branch uuid) returns boolean
    language sql stable parallel safe
    return coalesce(current_setting('plumbrow.scope', true), '') = 'all'
        or branch = any (string_to_array(nullif(current_setting('plumbrow.branches', true), ''), ',')::uuid[]);

-- Walls a table that carries branch_id. Forced, because the application owns its tables.
create function plumbrow_wall(walled regclass) returns void
    language plpgsql as $$
begin
    execute format('alter table %s enable row level security', walled);
    execute format('alter table %s force row level security', walled);
    execute format('create policy branch_wall on %s using (plumbrow_sees(branch_id)) with check (plumbrow_sees(branch_id))', walled);
end $$;

create function refuse_change() returns trigger
    language plpgsql as $$
begin
    raise exception using
        errcode = 'integrity_constraint_violation',
        message = format('%s is append-only: %s refused', tg_table_name, lower(tg_op));
end $$;

-- Makes a table append-only for everybody, its owner included.
create function plumbrow_append_only(kept regclass) returns void
    language plpgsql as $$
begin
    execute format('create trigger append_only before update or delete on %s for each row execute function refuse_change()', kept);
    execute format('create trigger never_truncated before truncate on %s for each statement execute function refuse_change()', kept);
end $$;
