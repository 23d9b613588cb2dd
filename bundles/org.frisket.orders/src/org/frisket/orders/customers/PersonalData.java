package org.frisket.orders.customers;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Locale;

import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.StageChange;
import org.frisket.model.Wording;
import org.frisket.orders.Entry;
import org.frisket.orders.Fact;
import org.frisket.orders.OrderException;
import org.frisket.orders.Paper;
import org.frisket.orders.internal.FactRows;
import org.frisket.orders.internal.JobRows;
import org.frisket.orders.internal.KeptJobs;
import org.frisket.orders.internal.PaperRows;
import org.frisket.orders.internal.ReferenceRows;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** All that is kept of a customer, as it is handed to whoever asks what that is. */
final class PersonalData {

	private PersonalData() {
	}

	static String json(Connection connection, Customer customer) throws SQLException, OrderException {
		JsonObject person = new JsonObject();
		for (CustomerField field : CustomerField.values()) {
			person.addProperty(field.word(), customer.get(field));
		}
		person.addProperty("changed", customer.changed().toString());
		JsonArray jobs = new JsonArray();
		for (Entry entry : JobRows.ofCustomer(connection, customer.id())) {
			jobs.add(job(connection, entry));
		}
		JsonObject all = new JsonObject();
		all.add("customer", person);
		all.add("jobs", jobs);
		return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls().create().toJson(all);
	}

	private static JsonObject job(Connection connection, Entry entry) throws SQLException, OrderException {
		Job document = KeptJobs.load(connection, entry);
		JsonObject job = new JsonObject();
		job.addProperty("number", entry.number());
		job.addProperty("title", entry.title());
		job.addProperty("stage", entry.stage().getLiteral());
		job.addProperty("due", entry.due().map(Object::toString).orElse(null));
		job.addProperty("quantity", entry.quantity());
		job.addProperty("notes", document.getNotes());
		job.addProperty("reference", ReferenceRows.ofJob(connection, entry.id()).orElse(null));
		job.addProperty("changed", entry.changed().toString());
		JsonArray says = new JsonArray();
		Jobs.elements(document).forEach(element -> {
			if (element instanceof Wording wording && wording.getText() != null) {
				says.add(wording.getText());
			}
		});
		job.add("wordings", says);
		JsonArray history = new JsonArray();
		document.getHistory().forEach(change -> history.add(object(change)));
		job.add("history", history);
		JsonArray papers = new JsonArray();
		PaperRows.list(connection, entry.id()).forEach(paper -> papers.add(object(paper)));
		job.add("papers", papers);
		JsonObject then = new JsonObject();
		FactRows.list(connection, entry.id()).stream().filter(fact -> fact.subject() == Fact.Subject.CUSTOMER)
				.forEach(fact -> then.addProperty(fact.field(), fact.text()));
		job.add("customerWhenMade", then);
		return job;
	}

	private static JsonObject object(StageChange change) {
		JsonObject object = new JsonObject();
		object.addProperty("at", change.getAt().toString());
		object.addProperty("who", change.getWho());
		object.addProperty("from", change.getFrom().getLiteral());
		object.addProperty("to", change.getTo().getLiteral());
		object.addProperty("remark", change.getRemark());
		return object;
	}

	private static JsonObject object(Paper paper) {
		JsonObject object = new JsonObject();
		object.addProperty("kind", paper.kind().name().toLowerCase(Locale.ROOT));
		object.addProperty("at", paper.at().toString());
		object.addProperty("who", paper.person());
		object.addProperty("remark", paper.remark());
		return object;
	}
}
