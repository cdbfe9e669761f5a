namespace Scrapwright.Core.Milling;

/// <summary>
/// What may go wrong, counted so that it adds up: minus the natural logarithm of a chance. Several sizes hold together with at least the product of their chances,
/// because every pass that takes more makes all of them worse; so their risks may add up to what is allowed.
/// </summary>
public static class Risk
{
    /// <summary>Share of a glue-up's or board's risk that its length may take. It is cheap to give: a few sixty-fourths at two ends.</summary>
    internal const double OfLength = 0.2;

    /// <summary>Share of a glue-up's risk that its thickness may take where all strips are planned alike: wood comes in steps of thickness, so most strips need none of it.</summary>
    internal const double OfThickness = 0.1;

    /// <summary>Share of a glue-up's risk that its width may take: the margin that costs most wood.</summary>
    internal const double OfWidth = 1 - OfLength - OfThickness;

    /// <summary>Risk of something asked for with so many per cent. [1]</summary>
    /// <param name="percent">Asked chance, 50 to 99 [%].</param>
    public static double Allowed(int percent) => -Math.Log(percent / 100.0);

    /// <summary>Risk of a size whose expectation lies so many standard deviations above what is needed. [1]</summary>
    /// <param name="deviations">Standard deviations, any; infinite for a size without spread.</param>
    public static double Of(double deviations) => -Math.Log(Math.Max(Chance.NormalShare(deviations), 1e-12));

    /// <summary>Standard deviations that must lie between what is needed and what is expected for a risk; not below zero. [1]</summary>
    /// <param name="risk">The risk, above zero.</param>
    public static double Deviations(double risk) => Math.Max(0, Chance.Quantile(Math.Exp(-risk)));

    /// <summary>Number of panel parts and runs of solid parts of a product: they share its risk.</summary>
    public static int SharersOf(Designs.Product product)
    {
        ArgumentNullException.ThrowIfNull(product);
        return Math.Max(1, product.Runs.Length + product.Parts.Count(p => p.Kind == Designs.PartKind.Panel));
    }
}
