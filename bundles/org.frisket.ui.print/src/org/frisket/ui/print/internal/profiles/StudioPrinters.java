package org.frisket.ui.print.internal.profiles;

import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.print.output.PrintChoices;
import org.frisket.print.output.TurnEdge;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.PrinterProfiles;
import org.frisket.studio.Studio;

/** The printers of the studio: read and changed off the UI thread, for the folder may lie on a slow disk, and told on it. */
public final class StudioPrinters {

	/** What is done to them. */
	public interface Change {
		void apply(PrinterProfiles printers) throws IOException;
	}

	/** One after the other. */
	private static final ISchedulingRule RULE = new ISchedulingRule() {

		@Override
		public boolean contains(ISchedulingRule other) {
			return other == this;
		}

		@Override
		public boolean isConflicting(ISchedulingRule other) {
			return other == this;
		}
	};

	private StudioPrinters() {
	}

	/** @param client told of them by name @param failed told why they cannot be read, for people */
	public static void read(Display display, Consumer<List<PrinterProfile>> client, Consumer<String> failed) {
		run(display, () -> {
			List<PrinterProfile> all = List.copyOf(new PrinterProfiles(Studio.folder().preferences()).all().values());
			return () -> client.accept(all);
		}, failed);
	}

	/** @param client told over which edge sheets are turned here @param failed told why that cannot be read, for people */
	public static void readTurn(Display display, Consumer<TurnEdge> client, Consumer<String> failed) {
		run(display, () -> {
			TurnEdge turn = PrintChoices.kept(Studio.folder().preferences()).options().turn();
			return () -> client.accept(turn);
		}, failed);
	}

	/** @param done told when it is kept @param failed told why it is not, for people */
	public static void change(Display display, Change change, Runnable done, Consumer<String> failed) {
		run(display, () -> {
			change.apply(new PrinterProfiles(Studio.folder().openForWriting().preferences()));
			return done;
		}, failed);
	}

	private interface Work {
		Runnable run() throws IOException;
	}

	private static void run(Display display, Work work, Consumer<String> failed) {
		Job job = new Job(Messages.StudioPrinters_name) {

			@Override
			protected IStatus run(IProgressMonitor progress) {
				Runnable news;
				try {
					news = work.run();
				} catch (IOException e) {
					news = () -> failed.accept(e.getMessage());
				}
				Runnable told = news;
				if (!display.isDisposed()) {
					display.asyncExec(told);
				}
				return Status.OK_STATUS;
			}
		};
		job.setSystem(true);
		job.setRule(RULE);
		job.schedule();
	}
}
