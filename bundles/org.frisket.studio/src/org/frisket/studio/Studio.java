package org.frisket.studio;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * The studio that this process works for. Where its folder is, is looked up at every question: what was chosen (on the
 * command line, or in the preferences of the workbench), else the environment variable {@value #VARIABLE}, else a
 * folder in the user's home. Safe for use by several threads.
 */
public final class Studio {

	/** Names the studio folder for whoever does not choose one. */
	public static final String VARIABLE = "FRISKET_STUDIO";

	private static final String USUAL_NAME = "Frisket Studio";

	private static volatile Path chosen;

	private Studio() {
	}

	/** From now on this folder is the studio's; empty for the usual one. Nothing is read or made yet. */
	public static void choose(Optional<Path> folder) {
		chosen = folder.orElse(null);
	}

	/** The studio's folder, which need not be there yet. */
	public static StudioFolder folder() {
		Path own = chosen;
		return new StudioFolder(own != null ? own : usual(System.getenv(), System.getProperty("user.home", ".")));
	}

	/** The folder of a user who chose none. */
	static Path usual(Map<String, String> environment, String home) {
		String named = environment.getOrDefault(VARIABLE, "").strip();
		try {
			if (!named.isEmpty()) {
				return Path.of(named);
			}
		} catch (InvalidPathException notAPath) {
			// as if it were not set: whoever opens the folder sees in messages where it is
		}
		return Path.of(home, USUAL_NAME);
	}
}
