package org.frisket.studio.store;

import java.sql.SQLException;
import java.util.Set;

import org.eclipse.osgi.util.NLS;

/** What went wrong with a server. States are those of PostgreSQL's table of error codes, and of the SQL standard. */
final class ServerReasons {

	private static final String TAKEN = "23505";
	/** Somebody else's change came between: serialisation failure, deadlock, a key that has just been taken. */
	private static final Set<String> CONFLICTS = Set.of("40001", "40P01", TAKEN);
	/** The server is being stopped, is not up yet, or has no connection left for one more desk. */
	private static final Set<String> AWAY = Set.of("57P01", "57P02", "57P03", "53300");
	private static final Set<String> STRANGERS = Set.of("28000", "28P01");
	private static final String NO_DATABASE = "3D000";
	private static final Set<String> READ_ONLY = Set.of("25006");
	private static final String NO_RIGHT = "42501";
	/** Too many notices wait. */
	private static final String UNHEARD = "54000";
	private static final Set<String> FULL = Set.of("53100", "53200");

	private ServerReasons() {
	}

	static boolean isConflict(SQLException e) {
		return CONFLICTS.contains(state(e));
	}

	/** Whether a key is there already. */
	static boolean isTaken(SQLException e) {
		return state(e).equals(TAKEN);
	}

	/** Whether the user may not do that. */
	static boolean isForbidden(SQLException e) {
		return state(e).equals(NO_RIGHT);
	}

	/** Whether others could not be told of a change, since one of them hears of none; it is kept all the same. */
	static boolean isUnheard(SQLException e) {
		return state(e).equals(UNHEARD);
	}

	/** Whether the connection is lost, so that another one may do. */
	static boolean isLost(SQLException e) {
		return state(e).startsWith("08") || AWAY.contains(state(e));
	}

	private static String state(SQLException e) {
		return e.getSQLState() == null ? "" : e.getSQLState();
	}

	/** In plain words. */
	static String of(SQLException e) {
		String state = state(e);
		if (state.equals(KeepableText.STATE)) {
			return e.getMessage();
		}
		if (isLost(e)) {
			return NLS.bind(Messages.Server_lost, firstLine(e));
		}
		if (STRANGERS.contains(state)) {
			return Messages.Server_stranger;
		}
		if (state.equals(NO_DATABASE)) {
			return Messages.Server_noDatabase;
		}
		if (READ_ONLY.contains(state)) {
			return Messages.Store_readOnly;
		}
		if (isForbidden(e)) {
			return NLS.bind(Messages.Server_noRight, firstLine(e));
		}
		if (FULL.contains(state)) {
			return Messages.Server_full;
		}
		return NLS.bind(Messages.Store_failed, firstLine(e));
	}

	private static String firstLine(SQLException e) {
		String message = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
		return message.lines().findFirst().orElse("");
	}
}
