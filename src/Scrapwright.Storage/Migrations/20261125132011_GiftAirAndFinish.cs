using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Scrapwright.Storage.Migrations
{
    /// <inheritdoc />
    public partial class GiftAirAndFinish : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Climate",
                table: "gifts",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Finish",
                table: "gifts",
                type: "TEXT",
                nullable: false,
                defaultValue: "");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Climate",
                table: "gifts");

            migrationBuilder.DropColumn(
                name: "Finish",
                table: "gifts");
        }
    }
}
