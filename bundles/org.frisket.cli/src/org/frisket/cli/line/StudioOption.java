package org.frisket.cli.line;

import java.nio.file.Path;
import java.util.Optional;

import org.frisket.studio.Studio;
import org.frisket.studio.StudioException;

import picocli.CommandLine.Option;

/** Which studio a verb works for. */
public final class StudioOption {

	@Option(names = "--studio", paramLabel = "DIR", description = "The studio's folder, made if it is missing; fonts in its folder fonts are at hand (default that in " + Studio.VARIABLE
			+ ", else one in your home).")
	private Path folder;

	/** To be called before anything is looked up. */
	public void choose() throws Refusal {
		choose(folder);
	}

	/** The same for a verb that has the option from the verb above it. @param folder null for the usual one */
	public static void choose(Path folder) throws Refusal {
		Studio.choose(Optional.ofNullable(folder));
		if (folder != null) {
			try {
				Studio.folder().open();
			} catch (StudioException e) {
				throw new Refusal("--studio: " + e.getMessage());
			}
		}
	}
}
