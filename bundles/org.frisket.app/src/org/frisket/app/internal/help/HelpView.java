package org.frisket.app.internal.help;

import java.util.List;
import java.util.Locale;

import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;
import org.frisket.help.HelpIndex;
import org.frisket.help.HelpPage;
import org.frisket.help.HelpPages;

/** The pages of help: contents, or what was found for the words in the field above, and the page chosen there. */
public final class HelpView extends ViewPart {

	public static final String ID = "org.frisket.app.help"; //$NON-NLS-1$

	private static final int MARGIN_PX = 8;
	private static final int[] SHARES = { 1, 3 };
	private static final String BLOCK = "block"; //$NON-NLS-1$

	private final HelpPages pages = HelpPages.in(Locale.forLanguageTag(Platform.getNL().replace('_', '-')));
	private final HelpIndex index = new HelpIndex(pages);
	private Text search;
	private Label count;
	private Table list;
	private StyledText text;
	private HelpPage shown;

	@Override
	public void createPartControl(Composite parent) {
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).spacing(MARGIN_PX, MARGIN_PX).applyTo(parent);
		search = new Text(parent, SWT.SEARCH | SWT.ICON_CANCEL | SWT.ICON_SEARCH);
		search.setMessage(Messages.HelpView_search);
		search.addListener(SWT.Modify, event -> list());
		search.addListener(SWT.KeyDown, this::searchKey);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
		count = new Label(parent, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(count);
		SashForm halves = new SashForm(parent, SWT.VERTICAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
		list = new Table(halves, SWT.SINGLE | SWT.FULL_SELECTION);
		list.addListener(SWT.Selection, event -> choose());
		text = new StyledText(halves, SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.MULTI);
		text.setMargins(MARGIN_PX, MARGIN_PX, MARGIN_PX, MARGIN_PX);
		text.addListener(SWT.MouseUp, event -> follow(text.getOffsetAtPoint(new Point(event.x, event.y))));
		text.addListener(SWT.KeyDown, this::textKey);
		halves.setWeights(SHARES);
		list();
		show(HelpPages.FIRST);
	}

	/** Contents, or what was found. */
	private void list() {
		list.removeAll();
		boolean asked = !search.getText().isBlank();
		if (asked) {
			List<HelpIndex.Hit> hits = index.search(search.getText());
			hits.forEach(hit -> row(hit.page(), hit.block()));
			count.setText(hits.isEmpty() ? Messages.HelpView_nothing
					: hits.size() == 1 ? Messages.HelpView_one : NLS.bind(Messages.HelpView_several, hits.size()));
			if (!hits.isEmpty()) {
				list.select(0);
				choose();
			}
		} else {
			pages.all().forEach(page -> row(page, -1));
			count.setText(Messages.HelpView_contents);
			markShown();
		}
		count.getParent().layout();
	}

	private void row(HelpPage page, int block) {
		TableItem row = new TableItem(list, SWT.NONE);
		row.setText(page.title());
		row.setData(page);
		row.setData(BLOCK, block);
	}

	private void choose() {
		if (list.getSelectionIndex() >= 0) {
			TableItem row = list.getItem(list.getSelectionIndex());
			show((HelpPage) row.getData(), (int) row.getData(BLOCK));
		}
	}

	private void searchKey(Event event) {
		if (event.keyCode == SWT.ARROW_DOWN && list.getItemCount() > 0) {
			list.setFocus();
			list.select(Math.max(0, list.getSelectionIndex()));
			event.doit = false;
		} else if (event.keyCode == SWT.ESC) {
			search.setText(""); //$NON-NLS-1$
		}
	}

	private void textKey(Event event) {
		if (event.keyCode == SWT.CR) {
			follow(text.getCaretOffset());
		}
	}

	private void follow(int offset) {
		if (offset >= 0 && offset < text.getCharCount() && text.getSelectionCount() == 0) {
			StyleRange style = text.getStyleRangeAtOffset(offset);
			if (style != null && style.data instanceof String link) {
				show(link);
			}
		}
	}

	/** Shows a page by its id; the first one if there is no such page. */
	public void show(String id) {
		HelpPage page = pages.page(id).orElse(pages.all().get(0));
		show(page, -1);
		markShown();
	}

	private void markShown() {
		list.deselectAll();
		for (TableItem row : list.getItems()) {
			if (row.getData() == shown) {
				list.setSelection(row);
			}
		}
	}

	private void show(HelpPage page, int block) {
		shown = page;
		new PageText(page).showIn(text, block);
	}

	/** The id of the page that is shown. */
	public String page() {
		return shown.id();
	}

	@Override
	public void setFocus() {
		search.setFocus();
	}
}
