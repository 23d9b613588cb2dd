package org.frisket.geometry.internal.repair;

import java.util.List;
import java.util.Locale;

import org.frisket.geometry.clean.Repair;
import org.frisket.geometry.repair.Mend;

/** What the cleaner has put right, as mends. */
final class RepairMends {

	private RepairMends() {
	}

	static List<Mend> of(List<Repair> repairs) {
		return repairs.stream().map(RepairMends::of).toList();
	}

	private static Mend of(Repair repair) {
		String unit = switch (repair.kind()) {
		case SPECK_REMOVED, WINDING_FIXED -> "mm2";
		case CROSSING_RESOLVED -> "";
		default -> "mm";
		};
		return new Mend(repair.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'), repair.place(),
				repair.amount(), unit);
	}
}
