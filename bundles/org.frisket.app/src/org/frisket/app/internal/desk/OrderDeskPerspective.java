package org.frisket.app.internal.desk;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.PlatformUI;
import org.frisket.app.internal.help.HelpView;
import org.frisket.ui.orders.Orders;

/** The order book with the docket of the selected job beside it, under the days of this week. */
public final class OrderDeskPerspective implements IPerspectiveFactory {

	/** What the week takes of the height. */
	private static final float WEEK_HEIGHT = 0.27f;
	/** What the docket leaves to the order book. */
	private static final float BOOK_WIDTH = 0.64f;
	/** What a hidden area of editors has to be left. */
	private static final float ALL = 0.95f;
	private static final String WEEK = "org.frisket.app.orderDesk.week"; //$NON-NLS-1$
	private static final String BOOK = "org.frisket.app.orderDesk.book"; //$NON-NLS-1$
	private static final String DOCKET = "org.frisket.app.orderDesk.docket"; //$NON-NLS-1$

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(false);
		IFolderLayout week = layout.createFolder(WEEK, IPageLayout.TOP, WEEK_HEIGHT, layout.getEditorArea());
		IFolderLayout book = layout.createFolder(BOOK, IPageLayout.TOP, ALL, layout.getEditorArea());
		IFolderLayout docket = layout.createFolder(DOCKET, IPageLayout.RIGHT, BOOK_WIDTH, BOOK);
		add(week, Orders.WEEK_ID);
		add(book, Orders.BOOK_ID);
		add(book, Orders.TODAY_ID);
		add(book, Orders.CUSTOMERS_ID);
		add(book, Orders.REPORTS_ID);
		add(docket, Orders.DOCKET_ID);
		docket.addPlaceholder(HelpView.ID);
	}

	/** An installation may lack one of them; a tab that only says so would be of no use. */
	private static void add(IFolderLayout folder, String view) {
		if (PlatformUI.getWorkbench().getViewRegistry().find(view) != null) {
			folder.addView(view);
		}
	}
}
