using System.Collections.Immutable;
using Scrapwright.Client.Plans;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Client.Choices;

/// <summary>The strips of a glue-up moved about, to see what comes of it. Nothing is kept until the maker says so.</summary>
public sealed class OrderTrial
{
    private readonly PlanReader reader;
    private readonly Lazy<ImmutableArray<ImmutableArray<int>>> others;
    private int next;

    /// <summary>A trial that begins with the plan's order.</summary>
    /// <param name="reader">The plan.</param>
    /// <param name="glueUp">One of its glue-ups.</param>
    public OrderTrial(PlanReader reader, GlueUp glueUp)
    {
        ArgumentNullException.ThrowIfNull(reader);
        ArgumentNullException.ThrowIfNull(glueUp);
        (this.reader, GlueUp) = (reader, glueUp);
        Order = [.. Enumerable.Range(0, glueUp.Strips.Length)];
        Plan = reader.Plan;
        Before = Figures = OrderFigures.Of(reader.Index, glueUp.Id);
        others = new(() => StripOrders.Of(reader.Index, glueUp));
    }

    /// <summary>The glue-up as the plan has it.</summary>
    public GlueUp GlueUp { get; }

    /// <summary>For each place from the lower edge, which strip of the plan's order lies there.</summary>
    public ImmutableArray<int> Order { get; private set; }

    /// <summary>The strips in the order tried, lower edge first.</summary>
    public IEnumerable<Strip> Strips => Order.Select(i => GlueUp.Strips[i]);

    /// <summary>True when the order is not the plan's.</summary>
    public bool IsChanged => !Order.SequenceEqual(Enumerable.Range(0, Order.Length));

    /// <summary>The plan with this order.</summary>
    public Plan Plan { get; private set; }

    /// <summary>What the plan's order comes to.</summary>
    public OrderFigures Before { get; }

    /// <summary>What this order comes to.</summary>
    public OrderFigures Figures { get; private set; }

    /// <summary>What the audit says; null until it has been asked about this order.</summary>
    public ImmutableArray<AuditFinding>? Findings { get; private set; }

    /// <summary>How many other orders there are that look different and keep neighbours apart.</summary>
    public int Others => others.Value.Length;

    /// <summary>Which of them was proposed last, from 1; 0 when none was.</summary>
    public int Proposed { get; private set; }

    /// <summary>Lays the strips in another order; the numbers follow at once, the audit when it is asked.</summary>
    /// <param name="order">For each place from the lower edge, which strip of the plan's order comes there.</param>
    public void Lay(ImmutableArray<int> order)
    {
        if (order.SequenceEqual(Order)) return;
        (Order, Findings, Proposed) = (order, null, 0);
        Plan = IsChanged ? PlanOrder.With(reader.Plan, GlueUp.Id, order) : reader.Plan;
        Figures = IsChanged ? OrderFigures.Of(new PlanIndex(Plan, reader.Index.Designs), GlueUp.Id) : Before;
    }

    /// <summary>Moves one strip to another place; those between make room.</summary>
    /// <param name="from">Its place, from the lower edge, from 0.</param>
    /// <param name="to">Where it shall lie.</param>
    public void Move(int from, int to) => Lay(Order.RemoveAt(from).Insert(to, Order[from]));

    /// <summary>Turns the strips round.</summary>
    public void TurnRound() => Lay([.. Order.Reverse()]);

    /// <summary>Lays the strips as the plan has them.</summary>
    public void PutBack() => Lay([.. Enumerable.Range(0, Order.Length)]);

    /// <summary>Lays the next of the other orders; after the last comes the first. Does nothing when there is none.</summary>
    public void Propose()
    {
        if (Others == 0) return;
        Lay(others.Value[next]);
        Proposed = next + 1;
        next = (next + 1) % Others;
    }

    /// <summary>Asks the audit about the plan with this order.</summary>
    public void Audit() => Findings ??= PlanAudit.Check(Plan);
}
