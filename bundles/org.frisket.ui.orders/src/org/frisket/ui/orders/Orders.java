package org.frisket.ui.orders;

/** What others may open of the order desk. */
public final class Orders {

	/** The view that shows the order book as a table. */
	public static final String BOOK_ID = "org.frisket.ui.orders.book"; //$NON-NLS-1$

	/** The view that shows the docket of the selected job. */
	public static final String DOCKET_ID = "org.frisket.ui.orders.docket"; //$NON-NLS-1$

	/** The view that shows the days of this week and what is due on them. */
	public static final String WEEK_ID = "org.frisket.ui.orders.week"; //$NON-NLS-1$

	/** The view that shows what is to be done today. */
	public static final String TODAY_ID = "org.frisket.ui.orders.today"; //$NON-NLS-1$

	/** The view that shows whom the studio works for. */
	public static final String CUSTOMERS_ID = "org.frisket.ui.orders.customers"; //$NON-NLS-1$

	/** The view that shows how the studio is doing. */
	public static final String REPORTS_ID = "org.frisket.ui.orders.reports"; //$NON-NLS-1$

	/** The perspective of the order desk; the application brings it. */
	public static final String DESK_PERSPECTIVE_ID = "org.frisket.app.orderDesk"; //$NON-NLS-1$

	/** The perspective of the bench; the application brings it. */
	public static final String BENCH_PERSPECTIVE_ID = "org.frisket.app.bench"; //$NON-NLS-1$

	/** The command that lays a job of the order book on the bench; without its parameter the selected one. */
	public static final String OPEN_JOB_COMMAND_ID = "org.frisket.ui.orders.command.openJob"; //$NON-NLS-1$

	/** The parameter of that command: the number of the job. */
	public static final String OPEN_JOB_NUMBER = OPEN_JOB_COMMAND_ID + ".number"; //$NON-NLS-1$

	/** The command that puts the job in front into the order book. */
	public static final String TAKE_IN_COMMAND_ID = "org.frisket.ui.orders.command.takeIn"; //$NON-NLS-1$

	private Orders() {
	}
}
