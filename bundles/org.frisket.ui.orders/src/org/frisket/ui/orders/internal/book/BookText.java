package org.frisket.ui.orders.internal.book;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.desk.BookChoice;
import org.frisket.orders.desk.BookGroup;
import org.frisket.orders.desk.BookGrouping;
import org.frisket.orders.desk.BookNames;
import org.frisket.orders.paper.Days;
import org.frisket.orders.paper.StageWords;

/**
 * What the order book says of its jobs, in words.
 *
 * @param stocks names of the studio's stocks by their ids
 */
record BookText(Map<String, String> stocks) implements BookNames {

	BookText {
		stocks = Map.copyOf(stocks);
	}

	@Override
	public String stage(Stage stage) {
		return StageWords.of(stage);
	}

	@Override
	public String stock(String id) {
		return stocks.getOrDefault(id, id);
	}

	/** All stocks of a job, with commas between them. */
	String stocksOf(Entry job) {
		return job.stock().isEmpty() ? "" //$NON-NLS-1$
				: String.join(", ", Stream.of(job.stock().split(" ")).map(this::stock).toList()); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** When a job is due; what is late or due today says so. */
	String due(Entry job, LocalDate today) {
		if (job.due().isEmpty()) {
			return ""; //$NON-NLS-1$
		}
		LocalDate due = job.due().get();
		String day = due.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.getDefault()) + ' ' + Days.brief(due);
		long late = ChronoUnit.DAYS.between(due, today);
		if (job.isLate(today)) {
			return late == 1 ? NLS.bind(Messages.BookText_lateOne, day) : NLS.bind(Messages.BookText_late, day, late);
		}
		return late == 0 && !job.isClosed() ? NLS.bind(Messages.BookText_dueToday, day) : day;
	}

	/** What is in a column of a job. */
	String of(Entry job, GridColumn column, LocalDate today) {
		return switch (column) {
		case NUMBER -> Long.toString(job.number());
		case PICTURE -> ""; //$NON-NLS-1$
		case TITLE -> job.title();
		case CUSTOMER -> job.customer();
		case STAGE -> stage(job.stage());
		case DUE -> due(job, today);
		case STOCK -> stocksOf(job);
		case QUANTITY -> Integer.toString(job.quantity());
		};
	}

	/** For those who listen to a row. */
	String spoken(Entry job, LocalDate today) {
		return NLS.bind(Messages.BookText_spoken, new Object[] { job.number(), job.title(), job.customer(),
				stage(job.stage()),
				due(job, today) });
	}

	/** The heading of a group: what its jobs have in common, and how many they are. */
	String heading(BookGroup group) {
		return NLS.bind(Messages.BookText_heading, common(group), group.size());
	}

	private String common(BookGroup group) {
		boolean none = group.value().isEmpty();
		return switch (group.grouping()) {
		case STAGE -> stage(Stage.valueOf(group.value()));
		case CUSTOMER -> none ? Messages.BookText_noCustomer : group.value();
		case STOCK -> none ? Messages.BookText_noStock : stock(group.value());
		case DUE_WEEK -> none ? Messages.BookText_noDue
				: NLS.bind(Messages.BookText_week, Days.brief(LocalDate.parse(group.value(),
				DateTimeFormatter.ISO_LOCAL_DATE)));
		case NONE -> ""; //$NON-NLS-1$
		};
	}

	static String of(BookChoice choice) {
		return switch (choice) {
		case ALL -> Messages.BookText_all;
		case DUE_THIS_WEEK -> Messages.BookText_dueThisWeek;
		case LATE -> Messages.BookText_lateJobs;
		case AWAITING_APPROVAL -> Messages.BookText_awaiting;
		case TO_CUT_TODAY -> Messages.BookText_toCut;
		};
	}

	static String of(BookGrouping grouping) {
		return switch (grouping) {
		case NONE -> Messages.BookText_ungrouped;
		case STAGE -> Messages.BookText_byStage;
		case CUSTOMER -> Messages.BookText_byCustomer;
		case STOCK -> Messages.BookText_byStock;
		case DUE_WEEK -> Messages.BookText_byWeek;
		};
	}
}
