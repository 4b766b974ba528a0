package org.plumbrow.database;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** What the database says about its own tables, asked so that an empty answer means all is well. */
record Catalog(Connection connection) {

    List<String> unwalledTables() throws SQLException {
        return list("""
                select t.relname from pg_class t
                join pg_attribute a on a.attrelid = t.oid and a.attname = 'branch_id' and not a.attisdropped
                where t.relkind in ('r', 'p') and t.relnamespace = 'public'::regnamespace
                  and not (t.relrowsecurity and t.relforcerowsecurity
                           and exists (select 1 from pg_policy p where p.polrelid = t.oid and p.polname = 'branch_wall'
                                         and p.polcmd = '*' and p.polqual is not null and p.polwithcheck is not null))
                """);
    }

    /** A second, permissive policy would open the wall that the first one built. */
    List<String> tablesWithAnotherDoor() throws SQLException {
        return list("""
                select t.relname || ': ' || p.polname from pg_policy p join pg_class t on t.oid = p.polrelid
                where p.polname <> 'branch_wall' and p.polpermissive
                """);
    }

    List<String> tablesBelowABranchWithoutItsId() throws SQLException {
        return list("""
                select distinct t.relname from pg_constraint c
                join pg_class t on t.oid = c.conrelid
                where c.contype = 'f'
                  and exists (select 1 from pg_attribute a
                              where a.attrelid = c.confrelid and a.attname = 'branch_id' and not a.attisdropped)
                  and not exists (select 1 from pg_attribute a
                                  where a.attrelid = t.oid and a.attname = 'branch_id' and not a.attisdropped)
                """);
    }

    List<String> foreignKeysWithoutIndex() throws SQLException {
        return list("""
                select t.relname || '.' || c.conname from pg_constraint c join pg_class t on t.oid = c.conrelid
                where c.contype = 'f'
                  and not exists (select 1 from pg_index i
                                  where i.indrelid = c.conrelid and i.indpred is null
                                    and (i.indkey::int2[])[0:cardinality(c.conkey) - 1] @> c.conkey)
                """);
    }

    List<String> namesMadeByTheSystem() throws SQLException {
        return list("""
                select t.relname || '.' || n.name
                from (select conrelid as owner, conname as name from pg_constraint where contype in ('c', 'f', 'u', 'x')
                      union select i.indrelid, x.relname from pg_index i join pg_class x on x.oid = i.indexrelid
                            where not i.indisprimary) n
                join pg_class t on t.oid = n.owner
                where t.relnamespace = 'public'::regnamespace and t.relname <> 'flyway_schema_history'
                  and n.name ~ ('^' || t.relname || '(_.*)?_(fkey|key|check|idx|excl)[0-9]*$')
                """);
    }

    /** Bits of tgtype: 8 delete, 16 update, 32 truncate. */
    List<String> appendOnlyTablesWithAGap() throws SQLException {
        return list("""
                select t.relname from pg_trigger g join pg_class t on t.oid = g.tgrelid
                join pg_proc p on p.oid = g.tgfoid and p.proname like 'refuse\\_change%'
                group by t.relname having bit_or(g.tgtype::int) & 56 <> 56
                """);
    }

    List<String> list(String query) throws SQLException {
        List<String> found = new ArrayList<>();
        try (PreparedStatement statement = connection.prepareStatement(query);
                ResultSet rows = statement.executeQuery()) {
            while (rows.next()) {
                found.add(rows.getString(1));
            }
        }
        return found;
    }
}
