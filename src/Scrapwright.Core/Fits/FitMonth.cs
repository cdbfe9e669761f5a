using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Fits;

/// <summary>One month of a fit where it lives. Sizes are rounded to a picometre so that the clearance is never told larger, and the most never smaller, than worked out.</summary>
/// <param name="Month">1 for January to 12 for December.</param>
/// <param name="MoisturePercent">Moisture content of all its wood. [%]</param>
/// <param name="Opening">The opening, at its narrowest.</param>
/// <param name="Held">What goes in, at its widest.</param>
/// <param name="Clearance">What is left, at its tightest: below zero it jams.</param>
/// <param name="MostClearance">What is left, at its loosest: the opening at its widest less what goes in at its narrowest.</param>
public sealed record FitMonth(int Month, double MoisturePercent, Length Opening, Length Held, Length Clearance, Length MostClearance);
