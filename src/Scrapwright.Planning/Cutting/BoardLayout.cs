namespace Scrapwright.Planning.Cutting;

/// <summary>What came of cutting a board.</summary>
/// <param name="Tree">The cuts.</param>
/// <param name="Value">Sum of the values of the parts placed.</param>
/// <param name="Bound">No layout is worth more; equal to the value when the layout is proven best.</param>
internal sealed record BoardLayout(CutTree Tree, long Value, long Bound)
{
    /// <summary>Whether no layout is worth more.</summary>
    internal bool IsProven => Value == Bound;
}
