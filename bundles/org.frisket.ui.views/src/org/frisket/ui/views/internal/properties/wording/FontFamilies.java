package org.frisket.ui.views.internal.properties.wording;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.frisket.model.FontRef;
import org.frisket.model.Jobs;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.FontEntry;
import org.frisket.ui.views.internal.fonts.FontFamily;

/** The fonts at hand by their families; they are read in the background. */
final class FontFamilies {

	private FontFamilies() {
	}

	/** Lists the families by name; the client is told on the UI thread unless the control is gone by then. */
	static void load(Control control, Consumer<List<FontFamily>> client) {
		inBackground(Messages.FontFamilies_list, control.getDisplay(), () -> FontFamily.of(FontLibraries.installed()),
				control, client);
	}

	/** Opens a font, so that the job can say by its content which one it was made with. */
	static void open(Control control, FontEntry font, Consumer<FontRef> client) {
		inBackground(Messages.FontFamilies_open, control.getDisplay(), () -> {
			try {
				FontFace face = font.open();
				return Jobs.font(face.family(), face.style(), face.digest(),
						face.source().map(Path::toAbsolutePath).map(Path::toString).orElse(null));
			} catch (UnreadableFontException e) {
				ILog.of(FontFamilies.class).warn(e.getMessage(), e);
				// makeready says what is wrong with it, and where
				return Jobs.font(font.family(), font.style(), null, null);
			}
		}, control, client);
	}

	/** What is done off the UI thread. */
	interface Work<T> {
		T result();
	}

	/** Works something out; the client is told on the UI thread unless the control is gone by then. */
	static <T> void inBackground(String name, Display display, Work<T> work, Control control,
			Consumer<T> client) {
		Job job = Job.createSystem(name, (ICoreRunnable) monitor -> {
			T result = work.result();
			if (!display.isDisposed()) {
				display.asyncExec(() -> {
					if (!control.isDisposed()) {
						client.accept(result);
					}
				});
			}
		});
		job.setPriority(Job.SHORT);
		job.schedule();
	}
}
