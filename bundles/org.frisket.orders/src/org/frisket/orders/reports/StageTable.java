package org.frisket.orders.reports;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Stage;

/** How many jobs stand at each stage and for how long, as a table for people: what is delivered or cancelled waits no more. */
final class StageTable {

	private StageTable() {
	}

	static Report of(StageReport stages, Clock clock) {
		List<Report.Column> columns = new ArrayList<>();
		int from = 0;
		for (int age : StageReport.AGES) {
			columns.add(new Report.Column(from == 0 ? NLS.bind(Messages.StageTable_upTo, age)
					: NLS.bind(Messages.StageTable_between, from, age), Messages.StageTable_jobs, 0, true));
			from = age + 1;
		}
		columns.add(new Report.Column(NLS.bind(Messages.StageTable_over, from - 1), Messages.StageTable_jobs, 0, true));
		columns.add(new Report.Column(Messages.StageTable_oldest, Messages.StageTable_days, 0, false));
		columns.add(new Report.Column(Messages.StageTable_late, Messages.StageTable_jobs, 0, false));
		List<Report.Row> rows = new ArrayList<>();
		for (StageReport.Row row : stages.rows()) {
			if (row.stage() != Stage.DELIVERED && row.stage() != Stage.CANCELLED) {
				List<OptionalDouble> values = new ArrayList<>();
				row.ages().forEach(age -> values.add(OptionalDouble.of(age)));
				values.add(row.jobs() == 0 ? OptionalDouble.empty() : OptionalDouble.of(row.oldest()));
				values.add(OptionalDouble.of(row.late()));
				rows.add(new Report.Row(word(row.stage()), values));
			}
		}
		return new Report(Messages.StageTable_title, LocalDate.now(clock), Messages.StageTable_stage, columns, rows, true, 0);
	}

	private static String word(Stage stage) {
		return switch (stage) {
		case ENQUIRY -> Messages.Stage_enquiry;
		case ORDERED -> Messages.Stage_ordered;
		case DESIGNED -> Messages.Stage_designed;
		case APPROVED -> Messages.Stage_approved;
		case PRINTED -> Messages.Stage_printed;
		case CUT -> Messages.Stage_cut;
		case FINISHED -> Messages.Stage_finished;
		case ON_HOLD -> Messages.Stage_onHold;
		default -> stage.getLiteral();
		};
	}
}
