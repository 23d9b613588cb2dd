package org.frisket.orders.reports;

import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

import org.frisket.orders.OrderException;
import org.frisket.studio.StudioFolder;

/** All reports there are, in the order in which people are shown them. */
public final class ReportSources {

	private ReportSources() {
	}

	private interface Reader {
		Report read(StudioFolder studio, Clock clock) throws IOException, OrderException;
	}

	private record Source(String word, String title, Reader reader) implements ReportSource {

		@Override
		public Report read(StudioFolder studio, Clock clock) throws IOException, OrderException {
			return reader.read(studio, clock);
		}
	}

	public static List<ReportSource> all() {
		return List.of(
				new Source("stages", Messages.StageTable_title,
						(studio, clock) -> StageTable.of(new Reports(studio, clock).stages(), clock)),
				new Source("on-time", Messages.OnTimeTable_byMonth,
						(studio, clock) -> OnTimeTable.byMonth(new Reports(studio, clock).deliveries(), clock)),
				new Source("on-time-weeks", Messages.OnTimeTable_byWeek,
						(studio, clock) -> OnTimeTable.byWeek(new Reports(studio, clock).deliveries(), clock)));
	}

	/** @param word on the command line */
	public static Optional<ReportSource> of(String word) {
		return all().stream().filter(source -> source.word().equals(word)).findFirst();
	}
}
