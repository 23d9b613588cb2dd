package org.frisket.orders.reports;

import java.io.IOException;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;

import org.frisket.orders.OrderException;
import org.frisket.orders.internal.DeliveryRows;
import org.frisket.orders.internal.JobRows;
import org.frisket.orders.internal.Transactions;
import org.frisket.studio.StudioFolder;

/** Reports on a studio's order book as it is now. */
public final class Reports {

	private final Transactions transactions;
	private final ZoneId zone;

	/** In the calendar of this machine. */
	public Reports(StudioFolder studio) {
		this(studio, Clock.systemDefaultZone());
	}

	/** @param clock tells what is now, and in which zone */
	public Reports(StudioFolder studio, Clock clock) {
		transactions = new Transactions(studio, clock);
		zone = clock.getZone();
	}

	/** How many jobs stand at each stage, and for how long. */
	public StageReport stages() throws IOException, OrderException {
		return StageReport.of(transactions.read(connection -> JobRows.list(connection, Long.MAX_VALUE)), transactions.now(),
				zone);
	}

	/** How many jobs were delivered in time, by month. */
	public OnTimeReport onTime() throws IOException, OrderException {
		return OnTimeReport.of(deliveries(), zone);
	}

	/** All that is delivered, by number. */
	public List<Delivery> deliveries() throws IOException, OrderException {
		return transactions.read(DeliveryRows::list);
	}
}
