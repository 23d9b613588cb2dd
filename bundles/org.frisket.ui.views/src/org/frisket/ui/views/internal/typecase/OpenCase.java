package org.frisket.ui.views.internal.typecase;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.chart.GlyphChart;
import org.frisket.typography.chart.GlyphEntry;
import org.frisket.typography.chart.GlyphFilter;
import org.frisket.typography.source.FontEntry;

/**
 * The font that lies open and what is looked for in it. Fonts are opened and searched in the background; only the latest
 * question is answered. For the UI thread.
 */
final class OpenCase {

	/** Told on the UI thread. */
	interface Client {

		/** These glyphs of the font are to be seen. */
		void found(GlyphChart chart, List<GlyphEntry> entries);

		/** The font cannot be opened. */
		void failed(String message);
	}

	/** What is asked; none of it is null but the font. */
	private record Question(FontEntry font, String words, GlyphFilter filter) {
	}

	private final Display display;
	private final Client client;
	private final Job job;
	private volatile Question question = new Question(null, "", GlyphFilter.ALL); //$NON-NLS-1$
	private volatile boolean answered = true;
	/** Only for the job. */
	private FontEntry open;
	private GlyphChart chart;

	OpenCase(Display display, Client client) {
		this.display = display;
		this.client = client;
		job = Job.createSystem(Messages.OpenCase_job, (ICoreRunnable) monitor -> answer());
		job.setPriority(Job.SHORT);
	}

	/** The font that was asked for last; null before. */
	FontEntry font() {
		return question.font();
	}

	/** Whether what was asked last is answered. */
	boolean isAnswered() {
		return answered;
	}

	/** @param font of which several lists may have an entry each; the one that lies open stays */
	void open(FontEntry font) {
		FontEntry before = question.font();
		if (before != null && before.place().equals(font.place()) && before.index() == font.index()
				&& before.instance().equals(font.instance()) && before.file().equals(font.file())) {
			return;
		}
		ask(new Question(font, question.words(), question.filter()));
	}

	void search(String words) {
		ask(new Question(question.font(), words, question.filter()));
	}

	void filter(GlyphFilter filter) {
		ask(new Question(question.font(), question.words(), filter));
	}

	private void ask(Question next) {
		if (!next.equals(question)) {
			question = next;
			if (next.font() != null) {
				answered = false;
				job.schedule();
			}
		}
	}

	private void answer() {
		Question asked = question;
		try {
			if (!Objects.equals(open, asked.font())) {
				chart = null;
				open = null;
				chart = GlyphChart.of(asked.font().open());
				open = asked.font();
			}
			GlyphChart found = chart;
			List<GlyphEntry> entries = asked.filter().of(found.search(asked.words()));
			tell(asked, () -> client.found(found, entries));
		} catch (UnreadableFontException e) {
			tell(asked, () -> client.failed(e.getMessage()));
		} catch (CancellationException stopped) {
			// somebody closes the view
			return;
		}
	}

	private void tell(Question asked, Runnable answer) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				// a later question has its own answer
				if (asked == question) {
					answered = true;
					answer.run();
				}
			});
		}
	}

	void close() {
		question = new Question(null, "", GlyphFilter.ALL); //$NON-NLS-1$
		job.cancel();
	}
}
