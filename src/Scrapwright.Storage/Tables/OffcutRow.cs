using System.Collections.Immutable;
using System.Text.Json;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Wood;

namespace Scrapwright.Storage.Tables;

/// <summary>One row of the table of offcuts. Lengths are whole picometres.</summary>
internal sealed class OffcutRow
{
    public long Id { get; set; }

    public long Position { get; set; }

    public bool IsDeleted { get; set; }

    public LengthUnit Unit { get; set; }

    public string Label { get; set; } = "";

    public string Species { get; set; } = "";

    public long LengthPm { get; set; }

    public long WidthPm { get; set; }

    public long ThicknessPm { get; set; }

    public int Count { get; set; }

    public Faces Faces { get; set; }

    public RingOrientation Rings { get; set; }

    public long CupPm { get; set; }

    public long BowPm { get; set; }

    public long TwistPm { get; set; }

    public string DefectsJson { get; set; } = "[]";

    public string Note { get; set; } = "";

    public void Take(Offcut offcut, LengthUnit unit)
    {
        Unit = unit;
        Label = offcut.Label;
        Species = offcut.Species;
        LengthPm = offcut.Length.Picometres;
        WidthPm = offcut.Width.Picometres;
        ThicknessPm = offcut.Thickness.Picometres;
        Count = offcut.Count;
        Faces = offcut.Faces;
        Rings = offcut.Rings;
        CupPm = offcut.Cup.Picometres;
        BowPm = offcut.Bow.Picometres;
        TwistPm = offcut.Twist.Picometres;
        DefectsJson = JsonSerializer.Serialize(offcut.Defects, PlanJson.Options);
        Note = offcut.Note;
    }

    public StoredOffcut Stored() => new(Id, Offcut(), Unit);

    public Offcut Offcut() => new()
    {
        Label = Label,
        Species = Species,
        Length = Length.FromPicometres(LengthPm),
        Width = Length.FromPicometres(WidthPm),
        Thickness = Length.FromPicometres(ThicknessPm),
        Count = Count,
        Faces = Faces,
        Rings = Rings,
        Cup = Length.FromPicometres(CupPm),
        Bow = Length.FromPicometres(BowPm),
        Twist = Length.FromPicometres(TwistPm),
        Defects = JsonSerializer.Deserialize<ImmutableArray<Defect>>(DefectsJson, PlanJson.Options),
        Note = Note,
    };
}
