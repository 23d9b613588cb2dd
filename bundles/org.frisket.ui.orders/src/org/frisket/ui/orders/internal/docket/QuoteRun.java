package org.frisket.ui.orders.internal.docket;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.PaperKind;
import org.frisket.orders.paper.JobWork;
import org.frisket.orders.paper.quote.QuotePaper;
import org.frisket.orders.paper.quote.QuoteSheet;
import org.frisket.orders.paper.quote.StudioQuote;
import org.frisket.run.Rate;
import org.frisket.studio.Studio;
import org.frisket.ui.studio.StoreJob;

/** Works a job out, asks how its quote is made, and writes it. */
final class QuoteRun {

	/**
	 * What the form begins with.
	 *
	 * @param agreement with the customer on prices; empty for none
	 * @param texts     as the studio keeps them
	 */
	record Start(JobWork work, String agreement, Map<String, String> texts) {
	}

	private QuoteRun() {
	}

	static void ask(DocketView view, Entry entry) {
		view.say(NLS.bind(Messages.QuoteRun_working, entry.number()), null);
		new StoreJob<>(NLS.bind(Messages.QuoteRun_working, entry.number()), () -> start(entry), start -> {
			if (!view.page().isDisposed()) {
				view.say("", null); //$NON-NLS-1$
				open(view, entry, start);
			}
		}, refused -> view.say(refused, null)).schedule();
	}

	private static Start start(Entry entry) throws IOException, OrderException {
		Means means = Means.now();
		JobWork work = means.papers().work(new OrderBook(Studio.folder()).open(entry.number()).job(), means.work(),
				Monitor.NONE);
		return new Start(work, Agreement.with(entry.customer()), new StudioQuote(Studio.folder()).texts());
	}

	private static void open(DocketView view, Entry entry, Start start) {
		new QuoteDialog(view.getSite().getShell(), entry, start, dialog -> write(view, entry, dialog)).open();
	}

	private static void write(DocketView view, Entry entry, QuoteDialog dialog) {
		if (dialog.isKept()) {
			keep(view, dialog.texts());
		}
		PaperRun.place(view.getSite().getShell(), entry, PaperKind.QUOTE)
				.ifPresent(file -> PaperRun.write(view, entry, PaperKind.QUOTE, file, (work, form) -> {
					Optional<Rate> rate = StudioQuote.rate(dialog.texts());
					QuoteSheet sheet = QuoteSheet.of(work.at(rate), rate, StudioQuote.check(dialog.texts()),
							dialog.date());
					return out -> QuotePaper.write(sheet, form, out);
				}));
	}

	private static void keep(DocketView view, Map<String, String> texts) {
		new StoreJob<>(Messages.QuoteRun_keeping, () -> {
			new StudioQuote(Studio.folder()).keep(texts);
			return null;
		}, done -> {
			// seen in the form the next time
		}, refused -> view.say(refused, null)).schedule();
	}
}
