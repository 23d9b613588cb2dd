package org.frisket.prepare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

import org.frisket.geometry.Contour;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;

/**
 * How much line one tool has to work in one stock of a job: of all that is shown, with one kind of operation.
 *
 * @param stock  id of the layers' stock; empty if they name none
 * @param tool   id of the tool that the operations name; empty if they leave it open
 * @param passes the greatest number that any of the operations asks for
 * @param lineMm length of the lines in mm, each counted once; dashes count without their gaps
 * @param workMm the same in mm, each line counted as often as its operation goes over it
 */
public record LineWork(String stock, OperationKind kind, String tool, int passes, double lineMm, double workMm) {

	/** Length in mm that is worked if every line is gone over so often; as the job asks for if that is the same. */
	public double mm(int times) {
		return times == passes ? workMm : lineMm * times;
	}

	private LineWork plus(Operation operation, double mm) {
		return new LineWork(stock, kind, tool, Math.max(passes, operation.getPasses()), lineMm + mm,
				workMm + mm * operation.getPasses());
	}

	private record Key(String stock, OperationKind kind, String tool) {
	}

	/** All of a job but what is printed, in the order of its layers. */
	public static List<LineWork> of(PreparedJob job) {
		Map<Key, LineWork> works = new LinkedHashMap<>();
		for (PreparedLayer layer : job.layers()) {
			String stock = Objects.requireNonNullElse(layer.layer().getStock(), "");
			for (PreparedElement element : layer.shown()) {
				for (Operation operation : element.operations()) {
					if (operation.getKind() != OperationKind.PRINT) {
						Key key = new Key(stock, operation.getKind(), Objects.requireNonNullElse(operation.getTool(), ""));
						works.merge(key, new LineWork(stock, key.kind(), key.tool(), 1, 0, 0), (known, none) -> known);
						works.computeIfPresent(key, (same, known) -> known.plus(operation, mm(element, operation)));
					}
				}
			}
		}
		return new ArrayList<>(works.values());
	}

	private static double mm(PreparedElement element, Operation operation) {
		List<Contour> dashes = element.dashes(operation);
		Stream<Contour> worked = dashes.isEmpty()
				? Stream.concat(element.region().contours().stream(), element.lines().stream())
				: dashes.stream();
		return worked.mapToDouble(Contour::length).sum();
	}
}
