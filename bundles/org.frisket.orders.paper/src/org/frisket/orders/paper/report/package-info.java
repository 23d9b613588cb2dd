/** Reports on all jobs as charts and on paper ({@link org.frisket.orders.paper.report.ReportPaper}). */
package org.frisket.orders.paper.report;
