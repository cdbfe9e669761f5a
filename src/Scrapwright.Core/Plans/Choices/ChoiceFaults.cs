using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Core.Plans.Choices;

/// <summary>Finds choices that mean nothing in a workshop, or no longer fit it.</summary>
public static class ChoiceFaults
{
    /// <summary>Every choice that names what is not there, or work that is done that no longer fits; empty when all mean something.</summary>
    public static ImmutableArray<ChoiceFault> Of(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var choices = request.Choices;
        if (choices.AreNone) return [];
        var designs = request.DeriveDesigns();
        var faults = ImmutableArray.CreateBuilder<ChoiceFault>();
        var singles = PlanStock.ByLabel(request);
        var labels = request.Pile.Select(o => o.Label).Concat(singles.Keys).ToHashSet(StringComparer.Ordinal);
        foreach (var (i, label) in choices.Saved.Index())
            if (!labels.Contains(label)) faults.Add(new($"saved[{i}]", label, "the label of an offcut in the pile"));
        foreach (var (i, pin) in choices.Pins.Index())
        {
            if (!singles.ContainsKey(pin.Offcut)) faults.Add(new($"pins[{i}].offcut", pin.Offcut, "the label of a single offcut in the pile"));
            AddUse($"pins[{i}]", pin.Gift, pin.Part);
        }

        foreach (var (i, order) in choices.Orders.Index())
        {
            AddUse($"orders[{i}]", order.Gift, order.Part);
            foreach (var (s, strip) in order.Strips.Index())
                if (singles.FindWood(strip.Offcut, request.Shop) is null) faults.Add(new($"orders[{i}].strips[{s}].offcut", strip.Offcut, "the label of a single offcut in the pile"));
        }

        faults.AddRange(DoneWork.Of(request, designs).Faults);
        return faults.ToImmutable();

        void AddUse(string path, string gift, string part)
        {
            if (designs.FirstOrDefault(d => d.Gift.Label == gift) is not { } design)
                faults.Add(new($"{path}.gift", gift, "the name of a gift"));
            else if (design.Outcome is DesignOutcome.Derived derived && derived.Product.Parts.All(p => p.Key != part || p.Kind != PartKind.Panel))
                faults.Add(new($"{path}.part", part, $"a panel part of {gift}: {string.Join(", ", derived.Product.Parts.Where(p => p.Kind == PartKind.Panel).Select(p => p.Key))}"));
        }
    }

    /// <summary>The choices of a request without those that mean nothing; work that is done and no longer fits stays, as its wood is used up.</summary>
    public static MakerChoices Sound(PlanRequest request)
    {
        var faults = Of(request).Select(f => f.Path).ToList();
        var choices = request.Choices;
        bool IsSound(string path) => !faults.Any(f => f == path || f.StartsWith(path + ".", StringComparison.Ordinal));
        return choices with
        {
            Saved = [.. choices.Saved.Where((_, i) => IsSound($"saved[{i}]"))],
            Pins = [.. choices.Pins.Where((_, i) => IsSound($"pins[{i}]"))],
            Orders = [.. choices.Orders.Where((_, i) => IsSound($"orders[{i}]"))],
        };
    }
}
