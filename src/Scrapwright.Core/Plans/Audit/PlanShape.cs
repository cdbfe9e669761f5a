using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>Whether a plan has everything that must be there: no missing object, text or list anywhere. All other checks build on it.</summary>
internal sealed class PlanShape(Findings findings)
{
    /// <summary>Looks at the whole plan.</summary>
    public void Check(Plan plan)
    {
        Text("fingerprint", plan.Fingerprint);
        if (There("request", plan.Request))
        {
            Request(plan.Request);
        }

        Each("made", plan.Made, (at, m) =>
        {
            Text(at + ".gift", m.Gift);
            Each(at + ".parts", m.Parts, (p, part) => Texts(p, part.Part, part.Piece));
        });
        Each("unmade", plan.Unmade, (at, u) =>
        {
            Text(at + ".gift", u.Gift);
            Each(at + ".reasons", u.Reasons, (_, _) => { });
        });
        Each("glueUps", plan.GlueUps, GlueUp);
        Each("faced", plan.Faced, (at, f) => Texts(at, f.Label, f.Upper, f.Lower));
        Each("boards", plan.Boards, (at, b) => Texts(at, b.Gift, b.Run, b.Piece, b.Offcut));
        Each("steps", plan.Steps, (at, s) =>
        {
            Texts(at, s.GlueUp, s.Gift);
            Each(at + ".works", s.Works, Work);
        });
        Each("leftovers", plan.Leftovers, (at, l) =>
        {
            if (There(at + ".piece", l.Piece))
            {
                Piece(at + ".piece", l.Piece);
            }
        });
        Each("ledger", plan.Ledger, (at, r) =>
        {
            Text(at + ".offcut", r.Offcut);
            Each(at + ".waste", r.Waste, (_, _) => { });
        });
        Each("rods", plan.Rods, (at, r) =>
        {
            Texts(at, r.Id, r.Species);
            Each(at + ".pieces", r.Pieces, Text);
        });
        Each("shopping", plan.Shopping, (at, s) => Texts(at, s.What, s.Why));
        Each("levels", plan.Levels, (_, _) => { });
    }

    private void GlueUp(string at, GlueUp glueUp)
    {
        Texts(at, glueUp.Id, glueUp.Gift, glueUp.Part);
        Each(at + ".also", glueUp.Also, (s, share) => Texts(s, share.Gift, share.Part));
        Each(at + ".strips", glueUp.Strips, (s, strip) => Texts(s, strip.Piece, strip.Offcut));
        foreach (var ladder in (ReadOnlySpan<Milling.Ladder>)[glueUp.ThicknessLadder, glueUp.WidthLadder])
        {
            if (There(at + " ladder", ladder))
            {
                Each(at + " ladder", ladder.Rungs, (_, _) => { });
            }
        }
    }

    private void Work(string at, Work work)
    {
        Each(at + ".in", work.In, Text);
        Each(at + ".out", work.Out, Piece);
    }

    private void Piece(string at, Piece piece)
    {
        Text(at + ".id", piece.Id);
        Each(at + ".lanes", piece.Lanes, (l, lane) => Text(l, lane.Offcut));
    }

    private void Request(PlanRequest request)
    {
        Text("request.workshop", request.Workshop);
        Each("request.pile", request.Pile, (at, o) =>
        {
            Texts(at, o.Label, o.Species, o.Note);
            Each(at + ".defects", o.Defects, (_, _) => { });
        });
        Each("request.gifts", request.Gifts, Gift);
        Each("request.designs", request.Designs, (at, d) =>
        {
            Texts(at, d.Key, d.Title, d.Family);
            Options(at, d.Options);
        });
        if (There("request.shop", request.Shop))
        {
            Shop(request.Shop);
        }
    }

    private void Gift(string at, Gift gift)
    {
        Texts(at, gift.Label, gift.Recipient, gift.Circle, gift.Design);
        Options(at, gift.Options);
    }

    private void Options(string at, ImmutableSortedDictionary<string, string> options)
    {
        if (There(at + ".options", options))
        {
            foreach (var (key, value) in options)
            {
                Text($"{at}.options.{key}", value);
            }
        }
    }

    private void Shop(Shop shop)
    {
        foreach (var (name, station) in (ReadOnlySpan<(string, object)>)
            [("jointer", shop.Jointer), ("planer", shop.Planer), ("tableSaw", shop.TableSaw), ("bandsaw", shop.Bandsaw), ("drillPress", shop.DrillPress)])
        {
            There("request.shop." + name, station);
        }

        if (There("request.shop.allowances", shop.Allowances))
        {
            var a = shop.Allowances;
            foreach (var allowance in (ReadOnlySpan<Allowance>)
                [a.FaceJoint, a.FacePlane, a.EdgeJoint, a.PanelFlatten, a.ResawCleanUp, a.Sand, a.EndTrim, a.WidthTrim])
            {
                There("request.shop.allowances", allowance);
            }
        }

        Each("request.shop.clamps", shop.Clamps, (at, c) => Text(at, c.Name));
        Each("request.shop.drillBits", shop.DrillBits, (_, _) => { });
        Each("request.shop.routerBits", shop.RouterBits, Text);
        Each("request.shop.blades", shop.Blades, Text);
        Each("request.shop.rods", shop.Rods, (at, r) => Text(at, r.Species));
        Each("request.shop.times", shop.Times, (_, _) => { });
    }

    private void Each<T>(string at, ImmutableArray<T> items, Action<string, T> check)
    {
        if (items.IsDefault)
        {
            findings.Add(at, "nothing", "a list");
            return;
        }

        for (var i = 0; i < items.Length; i++)
        {
            var place = $"{at}[{i}]";
            if (There(place, items[i]))
            {
                check(place, items[i]);
            }
        }
    }

    private void Texts(string at, params ReadOnlySpan<string> texts)
    {
        foreach (var text in texts)
        {
            Text(at, text);
        }
    }

    private void Text(string at, string text) => There(at, text);

    private bool There<T>(string at, T value) => findings.Require(value is not null, at, "nothing", "a value");
}
