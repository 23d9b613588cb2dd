package org.frisket.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.impose.Budget;
import org.frisket.impose.Ground;
import org.frisket.impose.Imposer;
import org.frisket.impose.Imposition;
import org.frisket.impose.Layout;
import org.frisket.impose.Part;
import org.frisket.impose.Turning;
import org.frisket.typography.FontFace;
import org.frisket.typography.Letter;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/**
 * Open instances of strip packing, if FRISKET_NESTING names the folder with them, beside the best densities published and
 * a bottom-left layout in one pass, which is our own first one; letters on sheets.
 */
final class ImposeBenchmark {

	private static final double PERCENT = 100;

	/** Records, as listed with the data of the instances' collectors in 2026. */
	private static final Map<String, Double> BEST = new LinkedHashMap<>();

	static {
		BEST.put("albano", 89.82);
		BEST.put("blaz1", 86.22);
		BEST.put("dagli", 90.17);
		BEST.put("jakobs1", 89.25);
		BEST.put("jakobs2", 87.72);
		BEST.put("marques", 92.02);
		BEST.put("shapes0", 69.98);
		BEST.put("shapes1", 76.72);
		BEST.put("shirts", 90.92);
	}

	private ImposeBenchmark() {
	}

	static void run() throws Exception {
		double seconds = Double.parseDouble(System.getenv().getOrDefault("FRISKET_NESTING_SECONDS", "10"));
		String folder = System.getenv("FRISKET_NESTING");
		if (folder == null) {
			System.out.println("nesting of open instances: left out, FRISKET_NESTING names no folder");
		} else {
			instances(Path.of(folder), seconds);
		}
		letters(seconds);
		for (double noise : new double[] { 0, 0.05, 1.5 }) {
			first("6 parts of 10000 nodes, noise of " + noise + " mm", 6, 10_000, 40, noise);
		}
		first("5000 different parts of 12 nodes", 5000, 12, 10, 3);
	}

	/** Until there is a layout at all, and the one that fills sheet after sheet. */
	private static void first(String what, int count, int nodes, double size, double noise) {
		SplittableRandom random = new SplittableRandom(2);
		List<Part> parts = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			List<Point> points = new ArrayList<>();
			for (int k = 0; k < nodes; k++) {
				// the other way round as y grows downwards
				double a = -2 * Math.PI * k / nodes;
				double r = size * (0.7 + 0.3 * Math.sin(3 * a)) + noise * random.nextDouble();
				points.add(new Point(r * Math.cos(a), r * Math.sin(a)));
			}
			Region region = new Region(List.of(new org.frisket.geometry.Piece(Contour.polygon(points), List.of())));
			parts.add(new Part("part " + i, region, 1, Turning.HALF, 0));
		}
		List<Double> told = new ArrayList<>();
		long begun = System.nanoTime();
		Imposer.lay(new Imposition(parts, Ground.sheets(1000, 700), 2, 5), Budget.seconds(1e6, 1),
				better -> told.add((System.nanoTime() - begun) / 1e9), () -> !told.isEmpty());
		System.out.printf("nesting of %s: first layout after %.2f s%n", what, told.get(0));
	}

	private static void instances(Path folder, double seconds) throws IOException {
		double ours = 0;
		double onePass = 0;
		double best = 0;
		int count = 0;
		try (Stream<Path> files = Files.list(folder)) {
			for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
				String name = file.getFileName().toString().replace(".json", "");
				JsonObject instance = JsonParser.parseString(Files.readString(file)).getAsJsonObject();
				List<Layout> told = new ArrayList<>();
				Layout layout = Imposer.lay(
						new Imposition(parts(instance), Ground.roll(instance.get("strip_height").getAsDouble()), 0, 0),
						Budget.seconds(seconds, 1), told::add, Monitor.NONE);
				double pass = told.get(Math.min(1, told.size() - 1)).utilisation();
				System.out.printf("nesting of %s: %.2f %% in %.0f s; one pass %.2f %%; best published %.2f %%%n", name,
						PERCENT * layout.utilisation(), seconds, PERCENT * pass, BEST.getOrDefault(name, Double.NaN));
				ours += PERCENT * layout.utilisation();
				onePass += PERCENT * pass;
				best += BEST.getOrDefault(name, Double.NaN);
				count++;
			}
		}
		System.out.printf("nesting, mean of %d: %.2f %%, %.2f points below the best published; one pass %.2f points below%n",
				count, ours / count, (best - ours) / count, (best - onePass) / count);
	}

	private static List<Part> parts(JsonObject instance) {
		List<Part> parts = new ArrayList<>();
		for (JsonElement each : instance.getAsJsonArray("items")) {
			JsonObject item = each.getAsJsonObject();
			List<Point> points = new ArrayList<>();
			for (JsonElement xy : item.getAsJsonArray("points")) {
				JsonArray pair = xy.getAsJsonArray();
				Point point = new Point(pair.get(0).getAsDouble(), pair.get(1).getAsDouble());
				if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
					points.add(point);
				}
			}
			if (points.get(0).equals(points.get(points.size() - 1))) {
				points.remove(points.size() - 1);
			}
			Contour contour = Contour.polygon(points);
			Region region = new Region(List.of(new org.frisket.geometry.Piece(
					contour.signedArea() < 0 ? contour : contour.reversed(), List.of())));
			int turns = item.getAsJsonArray("orientations").size();
			parts.add(new Part(item.get("id").getAsString(), region, item.get("demand").getAsInt(),
					turns == 4 ? Turning.QUARTER : turns == 2 ? Turning.HALF : Turning.NONE, 0));
		}
		return parts;
	}

	private static void letters(double seconds) throws Exception {
		FontFace face = FontFace.read(Path.of("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf"));
		List<Part> parts = new ArrayList<>();
		SplittableRandom random = new SplittableRandom(1);
		int left = 200;
		for (Letter letter : TextSetter.set("harboulnepwksftygi", face, Setting.ofCapHeight(40), Monitor.NONE).letters()) {
			Region region = new OutlineCleaner().clean(letter.outline(), FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE)
					.region();
			if (!region.isEmpty() && left > 0) {
				int quantity = Math.min(left, 6 + random.nextInt(12));
				parts.add(new Part("letter " + parts.size(), region, quantity, Turning.QUARTER, 0));
				left -= quantity;
			}
		}
		int count = parts.stream().mapToInt(Part::quantity).sum();
		List<Layout> told = new ArrayList<>();
		long begun = System.nanoTime();
		double[] first = new double[1];
		Layout layout = Imposer.lay(new Imposition(parts, Ground.sheets(304.8, 304.8), 2, 5), Budget.seconds(seconds, 1),
				better -> {
					if (told.isEmpty()) {
						first[0] = (System.nanoTime() - begun) / 1e9;
					}
					told.add(better);
				}, Monitor.NONE);
		Layout pass = told.get(Math.min(1, told.size() - 1));
		System.out.printf(
				"nesting of %d letters on 12 × 12 in: first layout after %.2f s on %d sheets; one pass %d sheets, %.2f %%; after %.0f s %d sheets, %.2f %%%n",
				count, first[0], told.get(0).sheets().size(), pass.sheets().size(), PERCENT * pass.utilisation(), seconds,
				layout.sheets().size(), PERCENT * layout.utilisation());
	}
}
