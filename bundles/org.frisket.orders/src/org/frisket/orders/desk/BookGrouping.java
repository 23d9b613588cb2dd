package org.frisket.orders.desk;

import java.util.List;

import org.frisket.orders.Entry;

/** What jobs of a group have in common. */
public enum BookGrouping {

	NONE {
		@Override
		List<String> of(Entry job) {
			return List.of("");
		}
	},

	/** By the name of the constant. */
	STAGE {
		@Override
		List<String> of(Entry job) {
			return List.of(job.stage().name());
		}
	},

	CUSTOMER {
		@Override
		List<String> of(Entry job) {
			return List.of(job.customer());
		}
	},

	/** By the id of a stock; a job that needs several is in the group of each. */
	STOCK {
		@Override
		List<String> of(Entry job) {
			return job.stock().indexOf(' ') < 0 ? List.of(job.stock()) : List.of(job.stock().split(" "));
		}
	},

	/** By the Monday of the week in which they are due, as in ISO 8601. */
	DUE_WEEK {
		@Override
		List<String> of(Entry job) {
			return List.of(job.due().map(due -> BookChoice.monday(due).toString()).orElse(""));
		}
	};

	/** What a job has; an empty text where it has none. */
	abstract List<String> of(Entry job);
}
