package org.frisket.ui.views.internal.makeready;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.viewers.ColumnLayoutData;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.contexts.IContextService;
import org.frisket.model.Jobs;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Cure;
import org.frisket.ui.Icon;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.MeasureText;
import org.frisket.ui.views.internal.BenchView;
import org.frisket.ui.views.internal.ElementText;
import org.frisket.ui.views.internal.SeverityText;

/**
 * The findings of the job in front, the gravest first, numbered as their flags on the bench are. Going to a line shows
 * its place; Enter or a double click goes there. The number of a line is the key of its cure, and that of the line gone
 * to has a key of its own.
 */
public final class MakereadyView extends BenchView {

	private static final String CONTEXT_ID = "org.frisket.ui.views.makeready.context"; //$NON-NLS-1$
	private static final int LAST_KEY = 9;
	/** Beside a text in its cell. */
	private static final int PADDING_PX = 16;
	/** Of the picture of a severity, and beside it. */
	private static final int PICTURE_PX = 20;
	/** As wide as most numbers and lengths are. */
	private static final String NUMBER = "000"; //$NON-NLS-1$
	private static final String LENGTH = "000.00 mm"; //$NON-NLS-1$
	private static final int TEXT_WEIGHT = 40;
	private static final int ELEMENT_WEIGHT = 20;
	private static final int LEAST_PX = 80;

	private Table table;
	private LocalResourceManager images;
	/** All of them; a number is a place among these. */
	private List<Finding> all = List.of();
	/** Those that are listed. */
	private List<Finding> findings = List.of();
	/** Where a finding was cured whose line is about to go; -1 if none was. */
	private int curedLine = -1;
	private final MakereadyMenu menu = new MakereadyMenu(this);

	@Override
	protected Control createContent(Composite parent) {
		Composite frame = new Composite(parent, SWT.NONE);
		TableColumnLayout columns = new TableColumnLayout();
		frame.setLayout(columns);
		table = new Table(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.VIRTUAL);
		images = new LocalResourceManager(JFaceResources.getResources(), table);
		table.setHeaderVisible(true);
		column(columns, Messages.MakereadyView_number, wide(0, Messages.MakereadyView_number, NUMBER), SWT.RIGHT);
		column(columns, Messages.MakereadyView_severity, wide(PICTURE_PX, Stream.concat(
				Stream.of(Messages.MakereadyView_severity), Stream.of(Severity.values()).map(SeverityText::of))
				.toArray(String[]::new)), SWT.LEFT);
		column(columns, Messages.MakereadyView_finding, new ColumnWeightData(TEXT_WEIGHT, LEAST_PX), SWT.LEFT);
		column(columns, Messages.MakereadyView_measured, wide(0, Messages.MakereadyView_measured, LENGTH), SWT.RIGHT);
		column(columns, Messages.MakereadyView_allowed, wide(0, Messages.MakereadyView_allowed, LENGTH), SWT.RIGHT);
		column(columns, Messages.MakereadyView_cure, new ColumnWeightData(TEXT_WEIGHT, LEAST_PX), SWT.LEFT);
		column(columns, Messages.MakereadyView_element, new ColumnWeightData(ELEMENT_WEIGHT, LEAST_PX), SWT.LEFT);
		table.addListener(SWT.SetData, event -> fill((TableItem) event.item, event.index));
		table.addListener(SWT.Selection, event -> reveal());
		table.addListener(SWT.DefaultSelection, event -> goThere());
		table.setMenu(menu.create(table));
		getSite().getService(IContextService.class).activateContext(CONTEXT_ID);
		return frame;
	}

	/** Room for the widest of some texts in the font of the table, whatever its size. */
	private ColumnLayoutData wide(int more, String... texts) {
		GC gc = new GC(table);
		try {
			return new ColumnPixelData(PADDING_PX + more
					+ Stream.of(texts).mapToInt(text -> gc.textExtent(text).x).max().orElse(0));
		} finally {
			gc.dispose();
		}
	}

	private void column(TableColumnLayout columns, String title, ColumnLayoutData width, int alignment) {
		TableColumn column = new TableColumn(table, alignment);
		column.setText(title);
		columns.setColumnData(column, width);
	}

	private void fill(TableItem item, int index) {
		if (index < 0 || index >= findings.size()) {
			// a table that shrinks may still ask for a line that is about to go, or has gone
			return;
		}
		Finding finding = findings.get(index);
		item.setText(new String[] { String.valueOf(all.indexOf(finding) + 1), SeverityText.of(finding.severity()), finding.message(),
				MeasureText.measured(finding), MeasureText.limit(finding), cure(finding),
				bench() == null ? "" : ElementText.of(bench().job(), finding.element()) }); //$NON-NLS-1$
		item.setImage(1, images.create(SeverityText.icon(finding.severity()).descriptor()));
	}

	/** The key with what it does, or what is to be done by hand. */
	private String cure(Finding finding) {
		if (bench() == null || !bench().areCuresKnown()) {
			return finding.cure();
		}
		if (!bench().areCuresKnown(finding)) {
			// a line is filled when it comes into view
			bench().seekCures(finding);
			return Messages.MakereadyMenu_soon;
		}
		List<Cure> cures = bench().cures(finding);
		int number = all.indexOf(finding) + 1;
		if (cures.isEmpty()) {
			return NLS.bind(Messages.MakereadyView_byHand, finding.cure());
		}
		return number > LAST_KEY ? cures.get(0).name()
				: NLS.bind(Messages.MakereadyView_key, number, cures.get(0).name());
	}

	/** The bench whose findings these are; null if there is none. */
	JobOnBench job() {
		return bench();
	}

	/** The finding of the line that is gone to; null if none is. */
	Finding selected() {
		int index = table.getSelectionIndex();
		return index < 0 || index >= findings.size() ? null : findings.get(index);
	}

	private void reveal() {
		Finding finding = selected();
		if (finding != null && bench() != null) {
			bench().reveal(finding);
		}
	}

	/** Carries out the first cure of the line that is gone to, or says why it does not. */
	void cureSelected() {
		Finding finding = selected();
		if (finding == null || bench() == null) {
			say(Messages.MakereadyView_noLine);
		} else if (!bench().isUpToDate() || !bench().areCuresKnown(finding)) {
			bench().seekCures(finding);
			say(Messages.MakereadyView_soon);
		} else if (bench().cures(finding).isEmpty()) {
			say(NLS.bind(Messages.MakereadyView_byHand, finding.cure()));
		} else {
			say(null);
			curedLine = table.getSelectionIndex();
			bench().cure(bench().cures(finding).get(0));
		}
	}

	private void say(String message) {
		getViewSite().getActionBars().getStatusLineManager().setErrorMessage(message);
	}

	void goThere() {
		reveal();
		if (getSite().getPage().getActiveEditor() != null) {
			getSite().getPage().activate(getSite().getPage().getActiveEditor());
		}
	}

	@Override
	protected void benchChanged() {
		all = List.of();
		findings = List.of();
		pictureChanged();
	}

	@Override
	public void jobChanged() {
		if (bench() != null && isBlank()) {
			pictureChanged();
		}
	}

	@Override
	public void pictureChanged() {
		JobOnBench bench = bench();
		if (bench == null) {
			show(List.of());
			showNote(Messages.MakereadyView_noBench);
		} else if (isBlank()) {
			show(List.of());
			showNote(Messages.MakereadyView_emptyJob);
		} else if (bench.isUpToDate()) {
			show(bench.findings());
			if (all.isEmpty()) {
				showNote(Messages.MakereadyView_noFindings);
			} else {
				showContent();
			}
		} else if (all.isEmpty()) {
			showNote(Messages.MakereadyView_checking);
		}
	}

	@Override
	public void curesMade() {
		table.clearAll();
	}

	@Override
	public void findingChosen(Finding finding) {
		int index = findings.indexOf(finding);
		if (index >= 0) {
			table.setSelection(index);
			table.showSelection();
		}
	}

	/** Lists the findings again, after others are wanted. */
	void refilter() {
		if (bench() != null && bench().isUpToDate()) {
			pictureChanged();
		}
	}

	private boolean isBlank() {
		return Jobs.elements(bench().job()).isEmpty();
	}

	private void show(List<Finding> newFindings) {
		Finding before = selected();
		all = newFindings;
		findings = newFindings.stream().filter(finding -> menu.shows(finding.severity())).toList();
		table.setItemCount(findings.size());
		table.clearAll();
		int index = before == null ? -1 : findings.indexOf(before);
		if (index >= 0) {
			table.setSelection(index);
		} else if (curedLine >= 0 && !findings.isEmpty()) {
			// the next one has come to its place: who cures by key goes on from there
			table.setSelection(Math.min(curedLine, findings.size() - 1));
		} else {
			table.deselectAll();
		}
		curedLine = -1;
		setPartName(all.isEmpty() ? Messages.MakereadyView_title
				: NLS.bind(Messages.MakereadyView_titleCount, all.size()));
		Icon icon = all.isEmpty() ? Icon.MAKEREADY : SeverityText.icon(all.get(0).severity());
		setTitleImage(images.create(icon.descriptor()));
	}

	/** The findings that are listed. */
	public List<Finding> findings() {
		return findings;
	}

	/** The list itself. */
	public Table table() {
		return table;
	}

	@Override
	public void setFocus() {
		if (note().isEmpty()) {
			table.setFocus();
			if (table.getSelectionIndex() < 0 && table.getItemCount() > 0) {
				table.setSelection(0);
			}
		} else {
			super.setFocus();
		}
	}
}
