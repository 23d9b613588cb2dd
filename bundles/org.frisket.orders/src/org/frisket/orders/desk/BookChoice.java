package org.frisket.orders.desk;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;

/** Which jobs of the order book are looked at. */
public enum BookChoice {

	ALL {
		@Override
		public boolean takes(Entry job, LocalDate today) {
			return true;
		}
	},

	/** What is to be ready from Monday to Sunday of this week, and is not closed. The week is that of ISO 8601. */
	DUE_THIS_WEEK {
		@Override
		public boolean takes(Entry job, LocalDate today) {
			LocalDate monday = monday(today);
			return !job.isClosed() && job.due().isPresent() && !job.due().get().isBefore(monday)
					&& job.due().get().isBefore(monday.plusWeeks(1));
		}
	},

	LATE {
		@Override
		public boolean takes(Entry job, LocalDate today) {
			return job.isLate(today);
		}
	},

	/** What is designed and waits for the customer's word. */
	AWAITING_APPROVAL {
		@Override
		public boolean takes(Entry job, LocalDate today) {
			return job.stage() == Stage.DESIGNED;
		}
	},

	/** What waits for the blade and is due by tomorrow; common practice, no source. Best seen by stock. */
	TO_CUT_TODAY {
		@Override
		public boolean takes(Entry job, LocalDate today) {
			return (job.stage() == Stage.APPROVED || job.stage() == Stage.PRINTED) && job.due().isPresent()
					&& !job.due().get().isAfter(today.plusDays(1));
		}

		@Override
		public BookGrouping grouping() {
			return BookGrouping.STOCK;
		}
	};

	/** Whether a job is among them. */
	public abstract boolean takes(Entry job, LocalDate today);

	/** The groups that go with it. */
	public BookGrouping grouping() {
		return BookGrouping.NONE;
	}

	static LocalDate monday(LocalDate day) {
		return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
	}
}
