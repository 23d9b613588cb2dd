package org.frisket.ui.material.internal.shelf;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.part.ViewPart;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.shelf.ShelfList;
import org.frisket.material.shelf.ShelfOrder;
import org.frisket.ui.material.internal.StudioShelf;
import org.frisket.ui.studio.StepUndo;
import org.frisket.ui.views.internal.TextKeys;

/** The studio's stock: looked for as one types, in an order, with all that can be done to it. */
public final class ShelfView extends ViewPart {

	private static final String CONTEXT_ID = "org.frisket.ui.material.shelf.context"; //$NON-NLS-1$
	private static final String ORDER = "order"; //$NON-NLS-1$
	private static final int SPACE_PX = 4;
	private static final int ORDER_PX = 110;

	private final StudioShelf shelf = StudioShelf.get();
	private final Runnable changed = this::shelfChanged;
	private ShelfActions actions;
	private StepUndo undo;
	private ShelfList<ShelvedStock> list = new ShelfList<>(List.of(), ShelvedStock::stock, StockText::words);
	private ShelfOrder order = ShelfOrder.NAME;
	private boolean low;
	/** Whether the notice is about the shelf as a whole. */
	private boolean troubled;
	private Text filter;
	private Combo orders;
	private NoticeLine notice;
	private Composite pages;
	private ShelfCanvas canvas;
	private Composite empty;
	private Label foot;

	@Override
	public void init(IViewSite site, IMemento memento) throws PartInitException {
		super.init(site, memento);
		String kept = memento == null ? null : memento.getString(ORDER);
		for (ShelfOrder each : ShelfOrder.values()) {
			order = each.name().equals(kept) ? each : order;
		}
	}

	@Override
	public void saveState(IMemento memento) {
		memento.putString(ORDER, order.name());
	}

	@Override
	public void createPartControl(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, SPACE_PX).applyTo(area);
		bar(area);
		notice = new NoticeLine(area);
		pages = new Composite(area, SWT.NONE);
		pages.setLayout(new StackLayout());
		GridDataFactory.fillDefaults().grab(true, true).applyTo(pages);
		foot = new Label(area, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).indent(2 * SPACE_PX, 0).applyTo(foot);
		canvas = new ShelfCanvas(pages, new Client(), stock -> null);
		actions = new ShelfActions(this);
		empty = new EmptyShelf(pages, actions);
		new ShelfDrag(canvas);
		canvas.setMenu(new ShelfMenu(canvas, actions).menu());
		getSite().getService(IContextService.class).activateContext(CONTEXT_ID);
		new TextKeys(getSite()).activate();
		undo = new StepUndo(getSite(), shelf.steps(this::say));
		shelf.addListener(changed);
		shelfChanged();
	}

	private void bar(Composite area) {
		Composite bar = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(SPACE_PX, SPACE_PX).spacing(SPACE_PX, 0).applyTo(bar);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
		filter = new Text(bar, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		filter.setMessage(Messages.ShelfView_filter);
		GridDataFactory.fillDefaults().grab(true, false).hint(80, SWT.DEFAULT).applyTo(filter);
		filter.addListener(SWT.Modify, event -> find());
		filter.addListener(SWT.KeyDown, this::keyInFilter);
		filter.addListener(SWT.Traverse, event -> {
			if (event.detail == SWT.TRAVERSE_ESCAPE && !filter.getText().isEmpty()) {
				event.doit = false;
				filter.setText(""); //$NON-NLS-1$
			}
		});
		orders = new Combo(bar, SWT.READ_ONLY | SWT.DROP_DOWN);
		GridDataFactory.fillDefaults().hint(ORDER_PX, SWT.DEFAULT).applyTo(orders);
		orders.setToolTipText(Messages.ShelfView_order);
		orders.setItems(Messages.ShelfView_byName, Messages.ShelfView_byFamily, Messages.ShelfView_byGrammage,
				Messages.ShelfView_byQuantity);
		orders.select(order.ordinal());
		orders.addListener(SWT.Selection, event -> {
			order = ShelfOrder.values()[orders.getSelectionIndex()];
			find();
		});
	}

	private void keyInFilter(Event event) {
		boolean home = event.keyCode == SWT.HOME || event.keyCode == SWT.END;
		if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
			canvas.selection().ifPresent(actions::edit);
			event.doit = false;
		} else if (!home && ShelfKeys.went(canvas, event.keyCode)) {
			event.doit = false;
		}
	}

	private final class Client implements ShelfCanvas.Client {

		@Override
		public void chosen(Stock stock) {
			actions.edit(stock);
		}

		@Override
		public void removed(Stock stock) {
			actions.remove(stock);
		}

		@Override
		public void counted(Stock stock, int more) {
			actions.count(stock, more);
		}

		@Override
		public void typed(char character) {
			filter.setText(character == 0 ? "" : filter.getText() + character); //$NON-NLS-1$
			if (character != 0) {
				filter.setFocus();
				filter.setSelection(filter.getText().length());
			}
		}
	}

	private void shelfChanged() {
		if (pages.isDisposed()) {
			return;
		}
		list = new ShelfList<>(shelf.stocks(), ShelvedStock::stock, StockText::words);
		if (shelf.trouble().isPresent()) {
			notice.show(shelf.trouble().get() + ' ' + Messages.ShelfView_readOnly);
		} else if (troubled) {
			notice.clear();
		}
		troubled = shelf.trouble().isPresent();
		undo.refresh();
		find();
	}

	private void find() {
		canvas.show(list.find(filter.getText(), order, low).stream().map(ShelvedStock::stock).toList());
		boolean nothing = list.size() == 0 && shelf.isKnown() && shelf.trouble().isEmpty();
		StackLayout layout = (StackLayout) pages.getLayout();
		Control page = nothing ? empty : canvas;
		if (layout.topControl != page) {
			layout.topControl = page;
			pages.layout();
		}
		int lowOnes = (int) shelf.stocks().stream().filter(shelved -> shelved.stock().isLow()).count();
		foot.setText(Summary.of(list.size(), canvas.stocks().size(), lowOnes));
	}

	/** Says why something was not done; empty when it was. */
	void say(Optional<String> message) {
		if (!pages.isDisposed()) {
			message.ifPresentOrElse(notice::show, notice::clear);
			undo.refresh();
		}
	}

	/** What the view says went wrong; empty if nothing did. */
	public String notice() {
		return notice.text();
	}

	/** Shows only what it is time to order, or everything. */
	void showLow(boolean only) {
		low = only;
		find();
	}

	boolean isLowShown() {
		return low;
	}

	/** The list itself. */
	public ShelfCanvas canvas() {
		return canvas;
	}

	/** Where the words are typed that are looked for. */
	public Text filter() {
		return filter;
	}

	/** Where the order is chosen. */
	public Combo orders() {
		return orders;
	}

	/** Whether the page is seen that says what to do with an empty shelf. */
	public boolean isEmptyPageShown() {
		return ((StackLayout) pages.getLayout()).topControl == empty;
	}

	/** What can be done here. */
	public ShelfActions actions() {
		return actions;
	}

	@Override
	public void setFocus() {
		if (isEmptyPageShown()) {
			for (Control child : empty.getChildren()) {
				if (child instanceof Button button && button.setFocus()) {
					return;
				}
			}
		}
		canvas.setFocus();
	}

	@Override
	public void dispose() {
		shelf.removeListener(changed);
		super.dispose();
	}
}
