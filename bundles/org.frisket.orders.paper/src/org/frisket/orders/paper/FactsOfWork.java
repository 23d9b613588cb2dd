package org.frisket.orders.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.model.Sheet;
import org.frisket.model.Stage;
import org.frisket.model.StageChange;
import org.frisket.prepare.Finding;
import org.frisket.run.MachineRun;
import org.frisket.run.paper.LegText;
import org.frisket.run.paper.Warnings;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.SheetPart;

/** Gathers what a docket says. */
final class FactsOfWork {

	/** Sizes that differ by less are the same to whoever counts parts, in mm. */
	private static final double ALIKE = 0.05;
	private static final List<Stage> SIGNED = List.of(Stage.DESIGNED, Stage.APPROVED, Stage.PRINTED, Stage.CUT, Stage.FINISHED,
			Stage.DELIVERED);

	/** What is alike of parts. */
	private record Kind(String stock, String colour, String title, long width, long height) {
	}

	/** What is alike of work. */
	private record Way(String stock, String operation, String tool, String settings, String basis) {
	}

	private final JobWork work;
	private final PaperForm form;
	private final Set<String> blocking = new LinkedHashSet<>();
	private final Set<String> cautions = new LinkedHashSet<>();

	FactsOfWork(JobWork work, PaperForm form) {
		this.work = work;
		this.form = form;
	}

	DocketFacts facts() {
		Job job = work.job();
		Bounds bounds = work.prepared().visibleBounds();
		warnings();
		double copies = work.isLaid() ? 1 : job.getQuantity();
		return new DocketFacts(text(job.getNumber()), JobCode.text(job.getNumber()), text(job.getTitle()),
				text(job.getCustomer()), Optional.ofNullable(job.getDue()), job.getStage(), job.getQuantity(),
				bounds.isEmpty() ? 0 : bounds.width(), bounds.isEmpty() ? 0 : bounds.height(), parts(), ways(), sheets(),
				copies * work.sheets().stream().mapToDouble(sheet -> sheet.run().timeline().seconds()).sum(),
				List.copyOf(blocking), List.copyOf(cautions), text(job.getNotes()), signed());
	}

	private static String text(String text) {
		return text == null ? "" : text.strip();
	}

	private List<DocketFacts.Part> parts() {
		Map<Kind, Integer> counts = new LinkedHashMap<>();
		Map<Kind, Bounds> sizes = new LinkedHashMap<>();
		for (SheetPart part : work.parts()) {
			Bounds box = part.room().bounds();
			Kind kind = new Kind(work.stockName(part.layer().getStock()), name(part.layer()), part.title(),
					Math.round(box.width() / ALIKE), Math.round(box.height() / ALIKE));
			counts.merge(kind, 1, Integer::sum);
			sizes.putIfAbsent(kind, box);
		}
		List<DocketFacts.Part> parts = new ArrayList<>();
		counts.forEach((kind, count) -> parts.add(new DocketFacts.Part(kind.stock(), kind.colour(), kind.title(),
				sizes.get(kind).width(), sizes.get(kind).height(), count, count * work.job().getQuantity())));
		return parts;
	}

	private static String name(Layer layer) {
		return text(layer.getName());
	}

	private List<DocketFacts.Work> ways() {
		Map<Way, Set<String>> ways = new LinkedHashMap<>();
		for (SheetWork sheet : work.sheets()) {
			MachineRun run = sheet.run();
			for (int i = 0; i < run.work().size(); i++) {
				LegText leg = new LegText(run, i);
				String stock = sheet.load().sheet().map(each -> work.stockName(each.getStock()))
						.orElseGet(() -> text(benchStock()));
				ways.computeIfAbsent(new Way(stock, leg.operation(), LegText.name(run.work().get(i).tool()), leg.settings(),
						leg.basis()), key -> new LinkedHashSet<>()).add(place(sheet));
			}
		}
		List<DocketFacts.Work> list = new ArrayList<>();
		ways.forEach((way, places) -> list.add(new DocketFacts.Work(way.stock(), way.operation(), way.tool(), way.settings(),
				way.basis(), List.copyOf(places))));
		return list;
	}

	/** All stocks on the bench: what lies there is worked as one. */
	private String benchStock() {
		return String.join(", ", work.prepared().layers().stream().filter(layer -> !layer.shown().isEmpty())
				.map(layer -> work.stockName(layer.layer().getStock())).distinct().toList());
	}

	private String place(SheetWork sheet) {
		return sheet.laid().map(LaidSheet::sheet).map(this::name).orElse(Messages.Docket_bench);
	}

	private String name(Sheet sheet) {
		return sheet.getName() == null || sheet.getName().isBlank()
				? NLS.bind(Messages.Docket_sheet, work.job().getSheets().indexOf(sheet) + 1)
				: sheet.getName();
	}

	private List<DocketFacts.Sheet> sheets() {
		return work.sheets().stream().filter(each -> each.laid().isPresent()).map(each -> {
			LaidSheet laid = each.laid().get();
			Sheet sheet = laid.sheet();
			return new DocketFacts.Sheet(name(sheet), work.stockName(sheet.getStock()), sheet.getWidth(), sheet.getHeight(),
					laid.parts().size(), laid.utilisation(), each.run().timeline().seconds());
		}).toList();
	}

	private void warnings() {
		Map<String, List<Finding>> alike = new LinkedHashMap<>();
		work.findings().forEach(finding -> alike
				.computeIfAbsent(finding.severity() + " " + finding.id() + " " + finding.cure(), key -> new ArrayList<>())
				.add(finding));
		alike.values().forEach(findings -> (findings.get(0).isBlocking() ? blocking : cautions).add(said(findings)));
		cautions.addAll(work.problems());
		// what warnings say of findings is said already
		for (Warnings warnings : work.sheets().stream().map(sheet -> Warnings.of(withoutFindings(sheet.run()))).toList()) {
			blocking.addAll(warnings.blocking());
			warnings.others().forEach(caution -> {
				// that the manual comes first stays the last
				cautions.remove(caution);
				cautions.add(caution);
			});
		}
	}

	private static MachineRun withoutFindings(MachineRun run) {
		return new MachineRun(run.machine(), run.carriage(), run.run(), run.work(), run.timeline());
	}

	/** The first of findings that are alike is the gravest; of the others paper only says how many there are. */
	private static String said(List<Finding> alike) {
		Finding first = alike.get(0);
		String text = NLS.bind(Messages.Docket_finding, first.message(), first.cure());
		return alike.size() == 1 ? text : NLS.bind(Messages.Docket_places, text, alike.size());
	}

	private List<DocketFacts.Signed> signed() {
		List<DocketFacts.Signed> signed = new ArrayList<>();
		for (Stage stage : SIGNED) {
			Optional<StageChange> last = work.job().getHistory().stream().filter(change -> change.getTo() == stage)
					.reduce((one, other) -> other).filter(change -> isReached(stage));
			signed.add(new DocketFacts.Signed(stage,
					last.filter(change -> change.getAt() != null).map(change -> LocalDate.ofInstant(change.getAt(), form.zone())),
					last.map(change -> text(change.getWho())).orElse("")));
		}
		return signed;
	}

	/** Whether it has not gone back behind it since. A job on hold keeps what was signed. */
	private boolean isReached(Stage stage) {
		Stage now = work.job().getStage();
		return now == Stage.ON_HOLD || now == Stage.CANCELLED || now.getValue() >= stage.getValue();
	}
}
