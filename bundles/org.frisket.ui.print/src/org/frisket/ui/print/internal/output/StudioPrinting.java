package org.frisket.ui.print.internal.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.print.output.PrintChoices;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.PrinterProfiles;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioPreferences;

/**
 * What the studio knows about printing and cutting. Its folder may be on another computer: it is read and written
 * off the UI thread.
 *
 * @param choices  of the last time
 * @param profiles of printers that were measured, by name
 * @param desk     with the machines; empty if it cannot be looked up
 */
record StudioPrinting(PrintChoices choices, List<PrinterProfile> profiles, Optional<DeskState> desk) {

	/** @param found told on the UI thread */
	static void look(Display display, Consumer<StudioPrinting> found) {
		Job.createSystem(Messages.PrintAndCutDialog_title, monitor -> {
			StudioPrinting known = look();
			if (!display.isDisposed()) {
				display.asyncExec(() -> found.accept(known));
			}
		}).schedule();
	}

	/** What cannot be looked up is not offered; a file that needs it says so when it is written. */
	private static StudioPrinting look() {
		StudioPreferences preferences = Studio.folder().preferences();
		PrintChoices choices = PrintChoices.USUAL;
		List<PrinterProfile> profiles = new ArrayList<>();
		Optional<DeskState> desk = Optional.empty();
		try {
			choices = PrintChoices.kept(preferences);
			profiles.addAll(new PrinterProfiles(preferences).all().values());
			desk = Optional.of(SettingsDesk.look(Studio.folder()));
		} catch (IOException e) {
			warn(e);
		}
		return new StudioPrinting(choices, profiles, desk);
	}

	static void keep(PrintChoices choices) {
		Job.createSystem(Messages.PrintAndCutDialog_title, monitor -> {
			try {
				choices.keep(Studio.folder().openForWriting().preferences());
			} catch (IOException e) {
				warn(e);
			}
		}).schedule();
	}

	private static void warn(IOException e) {
		ILog.of(StudioPrinting.class).warn(String.valueOf(e.getMessage()), e);
	}
}
