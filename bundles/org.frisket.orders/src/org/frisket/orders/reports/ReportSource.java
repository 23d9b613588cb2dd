package org.frisket.orders.reports;

import java.io.IOException;
import java.time.Clock;

import org.frisket.orders.OrderException;
import org.frisket.studio.StudioFolder;

/** Where a report comes from. */
public interface ReportSource {

	/** What it is called on the command line, such as {@code on-time}. */
	String word();

	/** For lists of reports, in the user's language. */
	String title();

	/** As the studio is now; it opens the studio's database. @param clock tells what is now, and in which zone */
	Report read(StudioFolder studio, Clock clock) throws IOException, OrderException;
}
