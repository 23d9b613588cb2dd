package org.frisket.editing.sheets;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Jobs;
import org.frisket.model.Sheet;
import org.frisket.model.SheetFit;

/** Changes what a sheet is called, or one of its measures; what lies on it stays where it is. */
public final class ChangeSheet extends RecordingEdit {

	private final Sheet sheet;
	private final boolean changes;
	private final Consumer<Sheet> setter;

	private ChangeSheet(String name, Sheet sheet, boolean changes, Consumer<Sheet> setter) {
		super(name);
		this.sheet = sheet;
		this.changes = changes;
		this.setter = setter;
	}

	/** @param name null or blank for none of its own */
	public static ChangeSheet name(Sheet sheet, String name) {
		String own = name == null || name.isBlank() ? null : name.strip();
		return new ChangeSheet(Messages.ChangeSheet_name, sheet, !Objects.equals(own, sheet.getName()),
				each -> each.setName(own));
	}

	/** @param width in mm along x, @param height along y */
	public static ChangeSheet size(Sheet sheet, double width, double height) {
		return new ChangeSheet(Messages.ChangeSheet_size, sheet, width > 0 && height > 0 && Double.isFinite(width + height)
				&& (width != sheet.getWidth() || height != sheet.getHeight()), each -> {
					each.setWidth(width);
					each.setHeight(height);
				});
	}

	/** @param mm along its edges */
	public static ChangeSheet margin(Sheet sheet, double mm) {
		return new ChangeSheet(Messages.ChangeSheet_margin, sheet,
				mm >= 0 && Double.isFinite(mm) && mm != sheet.getMargin(), each -> each.setMargin(mm));
	}

	/** @param mm between parts */
	public static ChangeSheet gap(Sheet sheet, double mm) {
		return new ChangeSheet(Messages.ChangeSheet_gap, sheet, mm >= 0 && Double.isFinite(mm) && mm != sheet.getGap(),
				each -> each.setGap(mm));
	}

	/** @param leftover the id of the leftover it is; null for a whole sheet */
	public static ChangeSheet leftover(Sheet sheet, String leftover) {
		return new ChangeSheet(Messages.ChangeSheet_leftover, sheet, !Objects.equals(leftover, sheet.getLeftover()),
				each -> each.setLeftover(leftover));
	}

	/** @param fit what the printed sheet may have done between its design and its measure */
	public static ChangeSheet fit(Sheet sheet, SheetFit fit) {
		return new ChangeSheet(Messages.ChangeSheet_fit, sheet, fit != sheet.getFit(), each -> each.setFit(fit));
	}

	/** @param printer the name of its profile; null for none */
	public static ChangeSheet printer(Sheet sheet, String printer) {
		return new ChangeSheet(Messages.ChangeSheet_printer, sheet, !Objects.equals(printer, sheet.getPrinter()),
				each -> each.setPrinter(printer));
	}

	/** @param mm along its edges, what the printer leaves bare */
	public static ChangeSheet printMargin(Sheet sheet, double mm) {
		return new ChangeSheet(Messages.ChangeSheet_printMargin, sheet,
				mm >= 0 && Double.isFinite(mm) && mm != sheet.getPrintMargin(), each -> each.setPrintMargin(mm));
	}

	@Override
	public boolean canApply() {
		return changes && Jobs.jobOf(sheet) != null;
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(sheet);
	}

	@Override
	protected void change() {
		setter.accept(sheet);
	}
}
