using Scrapwright.Cli.Commands;
using Scrapwright.Cli.Output;
using Spectre.Console.Cli;

namespace Scrapwright.Cli;

/// <summary>The commands, and what becomes of everything that goes wrong in them.</summary>
internal static class CommandLine
{
    /// <summary>Runs one command line.</summary>
    /// <returns>An exit code of <see cref="ExitCodes"/>.</returns>
    internal static async Task<int> RunAsync(string[] args, Terminal terminal)
    {
        // Without a command there is nothing to do but to say what could be done.
        if (args.Length == 0) args = ["--help"];
        var app = new CommandApp();
        app.Configure(config => Configure(config, terminal));
        try
        {
            return await app.RunAsync(args);
        }
        catch (CommandAppException wrong)
        {
            await terminal.Error.WriteLineAsync(OneLine(wrong.Message));
            await terminal.Error.WriteLineAsync("scrapwright --help lists the commands, scrapwright COMMAND --help what each takes.");
            return ExitCodes.BadInput;
        }
        catch (Exception fault)
        {
            await terminal.Error.WriteLineAsync(
                $"This is a fault of Scrapwright, not of what you gave it; please report it with these words: {fault.GetType().Name}: {OneLine(fault.Message)}");
            return ExitCodes.Fault;
        }
    }

    private static void Configure(IConfigurator config, Terminal terminal)
    {
        config.SetApplicationName("scrapwright");
        config.SetApplicationVersion(Version());
        config.PropagateExceptions();
        config.UseStrictParsing();
        config.ConfigureConsole(terminal.Console);
        config.Settings.Registrar.RegisterInstance(terminal);

        config.AddCommand<DemoCommand>("demo")
            .WithDescription("Write the example workshop into a folder: a pile of offcuts, gifts and a shop to try everything with.")
            .WithExample("demo", "shed");
        config.AddCommand<CheckCommand>("check")
            .WithDescription("Read a workshop folder and say what was understood, without planning.")
            .WithExample("check", "shed");
        config.AddCommand<PlanCommand>("plan")
            .WithDescription("Plan the gifts of a workshop folder. Writes plan.json, sheets.pdf and labels.pdf. Ctrl+C ends the search and keeps the best plan so far.")
            .WithExample("plan", "shed", "--out", "out")
            .WithExample("plan", "shed", "--out", "out", "--seconds", "60", "--paper", "a4");
        config.AddCommand<AuditCommand>("audit")
            .WithDescription("Check every number of a plan again, without the solver.")
            .WithExample("audit", "out/plan.json");
        config.AddCommand<WhyCommand>("why")
            .WithDescription("Say why a plan is as it is, by planning once more with one thing otherwise: a gift that is not made, an offcut, resawing, the number of glue-ups.")
            .WithExample("why", "out/plan.json", "\"Open day\"")
            .WithExample("why", "out/plan.json", "Potting", "--offcut", "C7");
        config.AddCommand<IdeasCommand>("ideas")
            .WithDescription("Say what else the pile gives beside the gifts on the list, where one offcut serves best, or what is worth buying. Ctrl+C ends the search and keeps the ideas so far.")
            .WithExample("ideas", "shed")
            .WithExample("ideas", "shed", "--offcut", "W3")
            .WithExample("ideas", "shed", "--buy", "--seconds", "60");
        config.AddCommand<CalendarCommand>("calendar")
            .WithDescription("Put the work of a plan on the shop's evenings, so that every gift is ready by its day. Writes calendar.json, calendar.ics for the calendar on a phone, and week.pdf for the wall.")
            .WithExample("calendar", "out/plan.json", "--out", "out", "--workshop", "shed")
            .WithExample("calendar", "out/plan.json", "--out", "out", "--start", "2027-05-04");
        config.AddCommand<GivenCommand>("given")
            .WithDescription("Say who got what in former years; with --occasion, take the gifts of an occasion that is over from the list to what was given. When anything is wrong, nothing is written.")
            .WithExample("given", "shed")
            .WithExample("given", "shed", "--occasion", "\"Midsummer open day\"", "--except", "gate-stand");
        config.AddCommand<AgainCommand>("again")
            .WithDescription("Propose gifts for everybody who got something on an occasion last time: what they have not had. Prints rows for gifts.csv.")
            .WithExample("again", "shed", "--occasion", "\"Apple day\"", "--out", "next.csv");
        config.AddCommand<WorthCommand>("worth")
            .WithDescription("Weigh making against buying for the work of a plan: jigs by what they save, gifts and parts by your time, all against their prices.")
            .WithExample("worth", "out/plan.json", "--workshop", "shed");
        config.AddCommand<SheetsCommand>("sheets")
            .WithDescription("Print the bench sheets of a plan again, on either paper.")
            .WithExample("sheets", "out/plan.json", "--out", "sheets.pdf", "--paper", "letter");
        config.AddCommand<EntryCommand>("entry")
            .WithDescription("Turn offcuts as you would mutter them into rows for pile.csv. Without LINE the lines are read from the standard input.")
            .WithExample("entry", "\"walnut 14 3/8 x 2 1/8 x 7/8 x3, cupped 1/16, knot 4-5\"");
        config.AddCommand<WoodCommand>("wood")
            .WithDescription("Say how much a wood moves, how hard and heavy it is, what its dust does and what to wear; with OTHER, two woods side by side.")
            .WithExample("wood", "walnut")
            .WithExample("wood", "walnut", "\"hard maple\"");
        config.AddCommand<ServeCommand>("serve")
            .WithDescription("Run the web app for the browser and the phone. Ctrl+C ends it.")
            .WithExample("serve")
            .WithExample("serve", "--urls", "http://0.0.0.0:5210", "--data", "my-workshop");
    }

    private static string Version() => typeof(CommandLine).Assembly.GetName().Version?.ToString(3) ?? "0";

    private static string OneLine(string text) => string.Join(' ', text.Split((char[])['\r', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}
