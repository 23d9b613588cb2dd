package org.frisket.ui.orders.internal.book;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.part.ViewPart;
import org.frisket.orders.Entry;
import org.frisket.orders.desk.BookColumn;
import org.frisket.orders.desk.BookGroup;
import org.frisket.orders.desk.BookQuery;
import org.frisket.orders.desk.BookSight;
import org.frisket.orders.desk.BookTable;
import org.frisket.orders.desk.SavedFilter;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.exchange.Arrivals;

/** The order book: all jobs of the studio, found as one types, sorted and grouped, with what can be done to them. */
public final class BookView extends ViewPart {

	private static final String CONTEXT_ID = "org.frisket.ui.orders.book.context"; //$NON-NLS-1$
	private static final int SPACE_PX = 4;

	private final OrderDesk desk = OrderDesk.get();
	private final Runnable changed = this::bookChanged;
	private final Set<String> folded = new HashSet<>();
	private BookQuery query = BookQuery.ALL;
	private BookText text = new BookText(Map.of());
	private IMemento memento;
	private BookActions actions;
	private BookFinder finder;
	private FilterBar bar;
	private BookNotice notice;
	private UnreadableLine unreadable;
	private BookPages pages;
	private BookGrid grid;
	private BookSelection selection;
	private Label foot;
	private OptionalLong awaited = OptionalLong.empty();
	private Object studio = Studio.folder().path();

	@Override
	public void init(IViewSite site, IMemento kept) throws PartInitException {
		super.init(site, kept);
		memento = kept;
		query = BookMemory.query(kept);
	}

	@Override
	public void saveState(IMemento kept) {
		BookMemory.keep(kept, query, grid);
	}

	@Override
	public void createPartControl(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, SPACE_PX).applyTo(area);
		bar = new FilterBar(area, query, this::show, this::goDown);
		notice = new BookNotice(area, 2 * SPACE_PX);
		unreadable = new UnreadableLine(area, 2 * SPACE_PX, this::say);
		pages = new BookPages(area);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(pages);
		foot = new Label(area, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).indent(2 * SPACE_PX, 0).applyTo(foot);
		BookSight none = BookTable.of(List.of(), text).find(query, LocalDate.now());
		grid = new BookGrid(pages, none.lines(folded), text, new Client());
		BookMemory.recall(memento, grid);
		actions = new BookActions(this);
		pages.fill(grid.table(),
				new EmptyBook(pages, Messages.BookView_empty).with(Messages.BookView_fill, actions::fillWithSamples)
						.with(Messages.BookView_first, actions::order),
				new EmptyBook(pages, Messages.BookView_nothing).with(Messages.BookView_clear, this::clear));
		selection = new BookSelection(grid, this::foot);
		getSite().setSelectionProvider(selection);
		actions.menu(selection);
		Arrivals.onDrop(area, getSite().getWorkbenchWindow());
		getSite().getService(IContextService.class).activateContext(CONTEXT_ID);
		finder = new BookFinder(parent.getDisplay(), this::found);
		actions.readFilters();
		desk.addListener(changed);
		bookChanged();
		new DayWatch(pages, this::look).start();
	}

	boolean isOpen() {
		return !pages.isDisposed();
	}

	private final class Client implements BookGrid.Client {

		@Override
		public void chosen(Entry job) {
			actions.open(job);
		}

		@Override
		public void sorted(BookColumn column) {
			show(query.sortedBy(column));
		}

		@Override
		public void typed(char character) {
			bar.type(character);
		}

		@Override
		public void folded(BookGroup group, boolean fold) {
			if (fold ? folded.add(group.value()) : folded.remove(group.value())) {
				int heading = grid.headingOf(group);
				grid.show(grid.lines().sight().lines(folded), text);
				grid.go(heading, false);
			}
		}

		@Override
		public void selected() {
			selection.changed();
		}
	}

	private boolean goDown() {
		if (grid.lines().size() > 0) {
			grid.table().setFocus();
			grid.go(Math.max(0, grid.cursorRow()), false);
		}
		return grid.lines().size() > 0;
	}

	/** Shows what is asked for. */
	public void show(BookQuery other) {
		if (other.grouping() != query.grouping()) {
			folded.clear();
		}
		query = other;
		bar.show(other);
		look();
	}

	private void look() {
		finder.find(desk.jobs(), text, query, LocalDate.now());
	}

	private void bookChanged() {
		if (!isOpen()) {
			return;
		}
		if (!studio.equals(Studio.folder().path())) {
			studio = Studio.folder().path();
			actions.otherStudio();
			actions.readFilters();
		}
		say(desk.trouble().orElse("")); //$NON-NLS-1$
		unreadable.show(desk.unreadable());
		StockNames.read(names -> {
			if (isOpen() && !names.equals(text.stocks())) {
				text = new BookText(names);
				look();
			}
		});
		look();
	}

	private void found(BookSight sight, BookText names) {
		if (!isOpen()) {
			return;
		}
		grid.show(sight.lines(folded), names);
		boolean noJobs = desk.jobs().isEmpty();
		pages.show(noJobs && desk.isKnown() && desk.trouble().isEmpty() && desk.unreadable().isEmpty(),
				!noJobs && sight.size() == 0 && desk.isWhole());
		awaited.ifPresent(number -> {
			if (desk.find(number).isPresent()) {
				awaited = OptionalLong.empty();
				grid.select(number);
			}
		});
		selection.changed();
		foot(selection.size());
	}

	private void foot(int selected) {
		foot.setText(BookSummary.of(grid.lines().sight(), selected, desk.jobs().size(), desk.isWhole()));
	}

	/** Selects a job as soon as it is in the table. */
	void selectWhenSeen(long number) {
		awaited = OptionalLong.of(number);
		say(""); //$NON-NLS-1$
		desk.refresh();
	}

	/** Says why something was not done; empty when it was. */
	void say(String message) {
		notice.say(message);
	}

	/** Says something in passing, at the foot of the window. */
	void status(String message) {
		getViewSite().getActionBars().getStatusLineManager().setMessage(message);
	}

	void show(List<SavedFilter> filters) {
		if (isOpen()) {
			say(desk.trouble().orElse("")); //$NON-NLS-1$
			bar.show(filters);
		}
	}

	/** Shows all jobs again, in their order. */
	void clear() {
		BookQuery all = query.withText("").withChoice(BookQuery.ALL.choice()); //$NON-NLS-1$
		show(all.withGrouping(query.grouping()));
		grid.table().setFocus();
	}

	BookQuery query() {
		return query;
	}

	BookActions actions() {
		return actions;
	}

	FilterBar bar() {
		return bar;
	}

	/** The table. */
	public BookGrid grid() {
		return grid;
	}

	/** Where words are typed that are looked for, which filter is chosen and which groups. */
	public List<Control> fields() {
		return List.of(bar.words(), bar.filters(), bar.groups());
	}

	/** What is said below the table. */
	public String summary() {
		return foot.getText();
	}

	/** What the view says went wrong; empty if nothing did. */
	public String notice() {
		return notice.said();
	}

	/** What names the jobs that cannot be read. */
	public Link unreadable() {
		return unreadable.link();
	}

	/** Whether the page is seen that says what to do with an empty order book. */
	public boolean isEmptyPageShown() {
		return pages.isEmptyShown();
	}

	/** Whether the page is seen that says that no job was found. */
	public boolean isNothingFoundShown() {
		return pages.isNothingShown();
	}

	@Override
	public void setFocus() {
		if (!pages.setFocus()) {
			bar.words().setFocus();
		}
	}

	@Override
	public void dispose() {
		desk.removeListener(changed);
		if (finder != null) {
			finder.dispose();
		}
		super.dispose();
	}
}
