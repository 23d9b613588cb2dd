/**
 */
package org.frisket.model;

import java.time.Instant;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stage Change</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One step of a job from stage to stage.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.StageChange#getAt <em>At</em>}</li>
 *   <li>{@link org.frisket.model.StageChange#getWho <em>Who</em>}</li>
 *   <li>{@link org.frisket.model.StageChange#getFrom <em>From</em>}</li>
 *   <li>{@link org.frisket.model.StageChange#getTo <em>To</em>}</li>
 *   <li>{@link org.frisket.model.StageChange#getRemark <em>Remark</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface StageChange extends EObject {
	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When it happened.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.frisket.model.StageChange#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who did it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Who</em>' attribute.
	 * @see #setWho(String)
	 * @generated
	 */
	String getWho();

	/**
	 * Sets the value of the '{@link org.frisket.model.StageChange#getWho <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Who</em>' attribute.
	 * @see #getWho()
	 * @generated
	 */
	void setWho(String value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * The default value is <code>"enquiry"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.Stage}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The stage that was left.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see org.frisket.model.Stage
	 * @see #setFrom(Stage)
	 * @generated
	 */
	Stage getFrom();

	/**
	 * Sets the value of the '{@link org.frisket.model.StageChange#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see org.frisket.model.Stage
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(Stage value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * The default value is <code>"enquiry"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.Stage}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The stage that was reached.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see org.frisket.model.Stage
	 * @see #setTo(Stage)
	 * @generated
	 */
	Stage getTo();

	/**
	 * Sets the value of the '{@link org.frisket.model.StageChange#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see org.frisket.model.Stage
	 * @see #getTo()
	 * @generated
	 */
	void setTo(Stage value);

	/**
	 * Returns the value of the '<em><b>Remark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Why, if anybody said so.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Remark</em>' attribute.
	 * @see #setRemark(String)
	 * @generated
	 */
	String getRemark();

	/**
	 * Sets the value of the '{@link org.frisket.model.StageChange#getRemark <em>Remark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Remark</em>' attribute.
	 * @see #getRemark()
	 * @generated
	 */
	void setRemark(String value);

} // StageChange
