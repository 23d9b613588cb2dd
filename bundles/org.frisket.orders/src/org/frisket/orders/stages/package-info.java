/**
 * What must be so before a job goes to another stage ({@link org.frisket.orders.stages.StageRules}). A studio turns rules
 * off that it does not keep.
 */
package org.frisket.orders.stages;
