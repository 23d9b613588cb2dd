package org.frisket.ui.print.internal.output;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.print.output.PrintChoices;
import org.frisket.print.output.PrintOptions;
import org.frisket.print.output.WholeSet;
import org.frisket.print.register.PrinterProfile;

/** All that is chosen about the files of sheets, one part below the other; it scrolls where there is too little room. */
final class PrintForm {

	static final int WIDTH_PX = 480;
	private static final int SPACING_PX = 8;

	private final Job job;
	private final ScrolledComposite scroll;
	private final Composite form;
	private final Runnable changed;
	private final Runnable validate;
	private final SheetsChosen which;
	private final PrintPart print;
	private final CutPart cut;
	private final PlaceRows place;

	/**
	 * @param suggested folder for the files, unless the studio remembers one
	 * @param first     number of the sheet that is chosen already; 0 for all
	 * @param changed   told when other sheets are wanted, or the same otherwise
	 * @param validate  told when anything else is chosen
	 */
	PrintForm(Composite parent, Job job, Path suggested, int first, Runnable changed, Runnable validate) {
		this.job = job;
		this.changed = changed;
		this.validate = validate;
		scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		GridDataFactory.fillDefaults().grab(false, true).hint(WIDTH_PX, SWT.DEFAULT).applyTo(scroll);
		form = new Composite(scroll, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(3).spacing(SPACING_PX, SPACING_PX).applyTo(form);
		scroll.setContent(form);
		which = new SheetsChosen(form, job, first, changed);
		print = new PrintPart(form, changed);
		cut = new CutPart(form, validate, this::refit);
		place = new PlaceRows(form, suggested, validate);
	}

	/** On what is chosen first. */
	void focus() {
		which.focus();
	}

	void measure() {
		scroll.setMinSize(form.computeSize(SWT.DEFAULT, SWT.DEFAULT));
	}

	private void refit() {
		form.layout(true, true);
		measure();
		validate.run();
	}

	/** What the studio remembers has come. A sheet that names its printer goes before what was chosen last. */
	void use(StudioPrinting known) {
		PrintChoices choices = known.choices();
		print.show(choices.options());
		print.offer(known.profiles(), job.getSheets().stream().map(Sheet::getPrinter)
				.filter(each -> each != null && !each.isBlank()).findFirst().orElse(choices.printer()));
		cut.choose(choices.format());
		known.desk().ifPresent(cut::offer);
		place.use(choices.folder(), choices.names());
		refit();
		changed.run();
	}

	/**
	 * What is to be worked out.
	 *
	 * @param face what is seen of it
	 * @throws IllegalArgumentException if something in the form does not do; the message says what
	 */
	ReadPrints.Request request(FaceView face) {
		List<Integer> numbers = which.numbers();
		Optional<SheetsChosen.Size> bare = which.bareSize();
		PrintOptions options = print.options();
		face.offer(numbers);
		return new ReadPrints.Request(options, numbers, bare, face.shown(), face.isBack());
	}

	/** @throws IllegalArgumentException if something in the form does not do; the message says what */
	void check() {
		which.numbers();
		which.bareSize();
		print.options();
	}

	/**
	 * The files that come of it.
	 *
	 * @throws IllegalArgumentException if something in the form does not do; the message says what
	 */
	WholeSet set(Outcome outcome) {
		return outcome.set(job, place.folder(), place.names(), cut.machine(), cut.format()
				.orElseThrow(() -> new IllegalArgumentException(Messages.PrintAndCutDialog_noFormats)));
	}

	/** Shows what will be written. @return whether the settings of the format do */
	boolean tell(List<Path> targets) {
		boolean valid = cut.validate();
		place.tell(targets);
		measure();
		return valid;
	}

	WriteRun.Request writing(Outcome outcome) {
		return new WriteRun.Request(set(outcome), cut.options(), cut.machine(), place.folder());
	}

	/** In the studio, for the next time. */
	void remember() {
		cut.remember();
		PrintOptions options = print.options();
		StudioPrinting.keep(new PrintChoices(options, options.printer().map(PrinterProfile::name).orElse(""), //$NON-NLS-1$
				cut.format().map(each -> each.id()).orElse(""), place.folderText(), place.namesText())); //$NON-NLS-1$
	}
}
