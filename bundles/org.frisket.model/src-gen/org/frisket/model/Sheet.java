/**
 */
package org.frisket.model;

import java.util.List;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sheet</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A sheet of stock, or a piece of a roll, with parts laid on it. It holds where they lie; what they look like follows their jobs.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Sheet#getId <em>Id</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getName <em>Name</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getStock <em>Stock</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getColour <em>Colour</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getWidth <em>Width</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getHeight <em>Height</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getMargin <em>Margin</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getGap <em>Gap</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#isRoll <em>Roll</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getLeftover <em>Leftover</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getPlacements <em>Placements</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getPrintMargin <em>Print Margin</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getPrinter <em>Printer</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getMarks <em>Marks</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getFit <em>Fit</em>}</li>
 *   <li>{@link org.frisket.model.Sheet#getMeasured <em>Measured</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Sheet extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Unique within the job.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the sheet is called; null if it has no name of its own.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Stock</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of its stock; null if none is chosen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stock</em>' attribute.
	 * @see #setStock(String)
	 * @generated
	 */
	String getStock();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#getStock <em>Stock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stock</em>' attribute.
	 * @see #getStock()
	 * @generated
	 */
	void setStock(String value);

	/**
	 * Returns the value of the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The colour of what lies on it, as #rrggbb; null leaves it to the stock.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Colour</em>' attribute.
	 * @see #setColour(String)
	 * @generated
	 */
	String getColour();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#getColour <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Colour</em>' attribute.
	 * @see #getColour()
	 * @generated
	 */
	void setColour(String value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm, along x.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(double)
	 * @generated
	 */
	double getWidth();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(double value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm, along y.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(double)
	 * @generated
	 */
	double getHeight();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(double value);

	/**
	 * Returns the value of the '<em><b>Margin</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm: how far parts stay from every edge.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Margin</em>' attribute.
	 * @see #setMargin(double)
	 * @generated
	 */
	double getMargin();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#getMargin <em>Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Margin</em>' attribute.
	 * @see #getMargin()
	 * @generated
	 */
	void setMargin(double value);

	/**
	 * Returns the value of the '<em><b>Gap</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm: how far parts stay from each other.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gap</em>' attribute.
	 * @see #setGap(double)
	 * @generated
	 */
	double getGap();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#getGap <em>Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gap</em>' attribute.
	 * @see #getGap()
	 * @generated
	 */
	void setGap(double value);

	/**
	 * Returns the value of the '<em><b>Roll</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it is a piece of a roll, as wide as the roll along y and as long as it is used along x.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Roll</em>' attribute.
	 * @see #setRoll(boolean)
	 * @generated
	 */
	boolean isRoll();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#isRoll <em>Roll</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Roll</em>' attribute.
	 * @see #isRoll()
	 * @generated
	 */
	void setRoll(boolean value);

	/**
	 * Returns the value of the '<em><b>Leftover</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the leftover it is; null for a whole sheet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Leftover</em>' attribute.
	 * @see #setLeftover(String)
	 * @generated
	 */
	String getLeftover();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#getLeftover <em>Leftover</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leftover</em>' attribute.
	 * @see #getLeftover()
	 * @generated
	 */
	void setLeftover(String value);

	/**
	 * Returns the value of the '<em><b>Placements</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.Placement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where parts lie; their order has no meaning.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Placements</em>' containment reference list.
	 * @generated
	 */
	List<Placement> getPlacements();

	/**
	 * Returns the value of the '<em><b>Print Margin</b></em>' attribute.
	 * The default value is <code>"5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm along the edges, what the printer leaves bare.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Print Margin</em>' attribute.
	 * @see #setPrintMargin(double)
	 * @generated
	 */
	double getPrintMargin();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#getPrintMargin <em>Print Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Print Margin</em>' attribute.
	 * @see #getPrintMargin()
	 * @generated
	 */
	void setPrintMargin(double value);

	/**
	 * Returns the value of the '<em><b>Printer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name of the printer profile it is printed with; null for none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Printer</em>' attribute.
	 * @see #setPrinter(String)
	 * @generated
	 */
	String getPrinter();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#getPrinter <em>Printer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Printer</em>' attribute.
	 * @see #getPrinter()
	 * @generated
	 */
	void setPrinter(String value);

	/**
	 * Returns the value of the '<em><b>Marks</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.RegisterMark}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Marks that are printed so that a blade finds the print; none on a sheet that is not printed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Marks</em>' containment reference list.
	 * @generated
	 */
	List<RegisterMark> getMarks();

	/**
	 * Returns the value of the '<em><b>Fit</b></em>' attribute.
	 * The default value is <code>"similarity"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.SheetFit}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the printed sheet may have done between its design and its measure.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fit</em>' attribute.
	 * @see org.frisket.model.SheetFit
	 * @see #setFit(SheetFit)
	 * @generated
	 */
	SheetFit getFit();

	/**
	 * Sets the value of the '{@link org.frisket.model.Sheet#getFit <em>Fit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fit</em>' attribute.
	 * @see org.frisket.model.SheetFit
	 * @see #getFit()
	 * @generated
	 */
	void setFit(SheetFit value);

	/**
	 * Returns the value of the '<em><b>Measured</b></em>' containment reference list.
	 * The list contents are of type {@link org.frisket.model.MeasuredMark}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where marks were found on the printed sheet; nothing while it was not measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Measured</em>' containment reference list.
	 * @generated
	 */
	List<MeasuredMark> getMeasured();

} // Sheet
